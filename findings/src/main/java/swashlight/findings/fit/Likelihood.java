package swashlight.findings.fit;

/** A likelihood as an object: what each row says about the parameters, exact readings and censored ones alike. */
public interface Likelihood {
    /** Number of rows. */
    int rows();

    /**
     * The logarithm of the chance (density) of one row.
     *
     * @param row index, 0 …
     * @param point parameters, each in its own unit
     * @return log-likelihood of the row, 1
     */
    double row(int row, double[] point);
}
