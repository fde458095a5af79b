package swashlight.findings.fit;

/**
 * The step of a central difference that balances cutting and rounding error: the cube root of the rounding unit, times the
 * size of the number. Source: Dennis and Schnabel, Numerical Methods for Unconstrained Optimization, section 5.6.
 */
final class CentralStep {
    /** ∛(2⁻⁵²), 1. */
    private static final double CUBE_ROOT_OF_ROUNDING = 6.055454452393343e-6;

    /** Numbers below this are stepped as if they were this size, 1. */
    private static final double SMALLEST_SIZE = 1e-8;

    private CentralStep() {}

    /** A step that is exact in binary beside the number it is added to. */
    static double at(double number) {
        double step = CUBE_ROOT_OF_ROUNDING * Math.max(Math.abs(number), SMALLEST_SIZE);
        double moved = number + step;
        return moved - number;
    }
}
