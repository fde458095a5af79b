package swashlight.drive.steady;

/** The settled state under a duty, or the best that was found. */
public sealed interface SteadyAnswer {
    /** The state reached. */
    SteadyPoint point();

    /** Worst balance over its magnitudes, 1. */
    double residual();

    /** Steps taken, 1. */
    int iterations();

    /** Every balance is met within {@code 1e-12} of its magnitudes (residual, 1; iterations, 1). */
    record Converged(SteadyPoint point, double residual, int iterations) implements SteadyAnswer {}

    /** Not solved: the best point, its residual (1), iterations (1), and what to try. */
    record NotConverged(SteadyPoint point, double residual, int iterations, String advice) implements SteadyAnswer {}
}
