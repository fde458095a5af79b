package swashlight.drive.heat;

/**
 * Air at the mean of wall and surroundings.
 *
 * @param viscosity ν, m²/s
 * @param diffusivity a, m²/s
 * @param conductivity k, W/(m·K)
 * @param prandtl Pr, unit 1
 * @param expansion β, 1/K
 */
public record FilmAir(double viscosity, double diffusivity, double conductivity, double prandtl, double expansion) {
    /** @throws IllegalArgumentException when a value is not positive */
    public FilmAir {
        if (!(viscosity > 0) || !(diffusivity > 0) || !(conductivity > 0) || !(prandtl > 0) || !(expansion > 0)) {
            throw new IllegalArgumentException("air needs ν, a, k, Pr, β > 0: " + viscosity + ", " + diffusivity + ", "
                    + conductivity + ", " + prandtl + ", " + expansion);
        }
    }
}
