/**
 * Text with units at the edge, SI doubles inside: {@code "7.1 cm3/rev"}, {@code "180 °F"}, {@code "80 ± 3 °C"}.
 *
 * <p>Idea: a {@link swashlight.files.unit.Unit} is an exact fraction of SI, so that what is written reads back to the last bit.
 * Imports drive.description (dimensions). Begin with {@code UnitText}; the units themselves are in {@code UnitTable}.
 */
package swashlight.files.unit;
