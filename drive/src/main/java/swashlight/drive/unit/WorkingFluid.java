package swashlight.drive.unit;

/**
 * What a loss model needs to know of the oil.
 *
 * @param dynamicViscosity µ, Pa·s
 * @param density ρ, kg/m³
 * @param bulkModulus B, Pa
 */
public record WorkingFluid(double dynamicViscosity, double density, double bulkModulus) {
    /** @throws IllegalArgumentException when a value is not positive */
    public WorkingFluid {
        if (!(dynamicViscosity > 0) || !(density > 0) || !(bulkModulus > 0)) {
            throw new IllegalArgumentException("a fluid needs µ, ρ, B > 0: " + dynamicViscosity + " Pa·s, " + density
                    + " kg/m³, " + bulkModulus + " Pa");
        }
    }
}
