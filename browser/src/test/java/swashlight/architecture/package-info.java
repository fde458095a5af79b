/**
 * Where this room stands in the house; the rest of the architecture is tested in {@code desk}.
 */
package swashlight.architecture;
