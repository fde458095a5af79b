package swashlight.drive.unit;

/**
 * Geometry of a rotating group: what it displaces and how fast its pistons go.
 *
 * <pre>
 *   V = 2 N A R tan α          displacement a turn      m³/rev
 *   v = R ω tan α              greatest piston speed    m/s
 *
 *   N   pistons                1       3 … 15
 *   A   π d²/4, d diameter     m
 *   R   pitch radius           m
 *   α   swash angle, signed    rad
 * </pre>
 *
 * Source: ISO 4391 (definition); Esposito, Fluid Power with Applications, ch. 5 (seen). Check: {@code displacement},
 * {@code swash-angle}, {@code swash-tangent}, {@code piston-speed}, {@code pump-flow}.
 *
 * @param pistons N, unit 1
 * @param pistonDiameter d, m
 * @param pitchRadius R, m
 */
public record PistonGroup(int pistons, double pistonDiameter, double pitchRadius) {
    /** @throws IllegalArgumentException when a size is not positive */
    public PistonGroup {
        if (pistons < 1 || !(pistonDiameter > 0) || !(pitchRadius > 0)) {
            throw new IllegalArgumentException("a piston group needs N ≥ 1, d > 0, R > 0: " + pistons + ", "
                    + pistonDiameter + " m, " + pitchRadius + " m");
        }
    }

    /** Displacement V at a swash angle α (rad), m³/rev. */
    public double displacement(double swashAngle) {
        return perTangent() * Math.tan(swashAngle);
    }

    /** Swash angle that displaces V (m³/rev), rad. */
    public double swashAngle(double displacement) {
        return Math.atan(displacement / perTangent());
    }

    /** Greatest piston speed at a swash angle (rad) and a shaft speed (rad/s), m/s. */
    public double pistonSpeed(double swashAngle, double speed) {
        return pitchRadius * speed * Math.tan(swashAngle);
    }

    private double perTangent() {
        return 2 * pistons * Math.PI * pistonDiameter * pistonDiameter / 4 * pitchRadius;
    }
}
