/**
 * What work and parts cost, in files.
 *
 * <p>Begin with {@link swashlight.files.prices.PricesFiles}. Imports findings, {@code document}.
 */
package swashlight.files.prices;
