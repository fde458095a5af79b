package swashlight.findings.losses;

/** One way of losing flow or torque, as a function that a coefficient of at least zero multiplies. */
interface LossTerm {
    /** Stable name, kebab case. */
    String key();

    /** What it is in plain words. */
    String words();

    /** Unit of the published coefficient. */
    String unit();

    /** What multiplies the coefficient in a row, SI unit of its dimension. */
    double at(BenchPoint point, BenchRun test);

    /** What the raw coefficient is divided by to give the published, dimensionless one; SI unit of its dimension. */
    double scale(double displacement);
}
