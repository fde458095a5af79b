package swashlight.findings.fit;

/** How a fit ended; failing to converge is an answer too, with the best point reached and a way out. */
public sealed interface FitOutcome permits FitOutcome.Converged, FitOutcome.NotConverged {
    /** The parameters reached (a copy), each in its own unit; always finite. */
    double[] point();

    /** What was made small: sum of squared residuals, or minus the log-likelihood, 1 (in squared residual units). */
    double objective();

    /** Iterations spent. */
    int iterations();

    /** Whether the point may be used as the answer. */
    boolean converged();

    /** One line for people: how it ended, and what to try if it did not. */
    String line();

    /**
     * The answer.
     *
     * @param point parameters, each in its own unit
     * @param objective sum of squared residuals or minus log-likelihood, 1
     * @param iterations iterations spent
     */
    record Converged(double[] point, double objective, int iterations) implements FitOutcome {
        public Converged {
            point = point.clone();
        }

        @Override
        public double[] point() {
            return point.clone();
        }

        @Override
        public boolean converged() {
            return true;
        }

        @Override
        public String line() {
            return "converged in " + iterations + " iterations, objective " + Figures.significant(objective, 6);
        }
    }

    /**
     * The best point of a fit that stopped early.
     *
     * @param point parameters, each in its own unit
     * @param objective sum of squared residuals or minus log-likelihood, 1
     * @param iterations iterations spent
     * @param advice what to try
     */
    record NotConverged(double[] point, double objective, int iterations, String advice) implements FitOutcome {
        public NotConverged {
            point = point.clone();
        }

        @Override
        public double[] point() {
            return point.clone();
        }

        @Override
        public boolean converged() {
            return false;
        }

        @Override
        public String line() {
            return "not converged after " + iterations + " iterations, objective " + Figures.significant(objective, 6)
                    + "; " + advice;
        }
    }
}
