package swashlight.findings.cause;

import swashlight.drive.fault.Fault;
import swashlight.findings.fit.NormalLaw;

/**
 * How severe a fault is before anything was read. Own estimate, no source. All severities in the fault's own SI unit.
 */
public sealed interface SeverityPrior {
    /** The severity that a share (1) of the cases stays below, own unit. */
    double severity(double share);

    /** Share of the cases below a severity (own unit), 1. */
    double below(double severity);

    /** Places of equal standing for tabling an answer: first and last are least and most, own unit. */
    double[] ladder(int steps);

    /** True when only the places of {@link #ladder} can be, and nothing between them. */
    boolean inSteps();

    /** The prior of a fault; counted faults come in whole pieces. */
    static SeverityPrior of(Fault fault, boolean counted) {
        if (fault.whole()) {
            return new Whole(fault.least());
        }
        if (counted) {
            return new Counted(fault.least(), fault.most());
        }
        return new Spread(fault.least(), fault.usual(), fault.most());
    }

    /** There or not there: only one severity, in its own unit. */
    record Whole(double only) implements SeverityPrior {
        @Override
        public double severity(double share) {
            return only;
        }

        @Override
        public double below(double severity) {
            return severity >= only ? 1 : 0;
        }

        @Override
        public double[] ladder(int steps) {
            return new double[] {only};
        }

        @Override
        public boolean inSteps() {
            return true;
        }
    }

    /** Whole pieces from least to most (1), each next one a third as frequent. */
    record Counted(double least, double most) implements SeverityPrior {
        private static final double NEXT = 1.0 / 3; // own estimate, no source

        @Override
        public double severity(double share) {
            double count = least;
            while (count < most && share > below(count)) {
                count++;
            }
            return count;
        }

        @Override
        public double below(double severity) {
            double sum = 0;
            double all = 0;
            double weight = 1;
            for (double count = least; count <= most; count++) {
                all += weight;
                sum += count <= severity ? weight : 0;
                weight *= NEXT;
            }
            return sum / all;
        }

        @Override
        public double[] ladder(int steps) {
            double[] counts = new double[(int) (most - least) + 1];
            for (int i = 0; i < counts.length; i++) {
                counts[i] = least + i;
            }
            return counts;
        }

        @Override
        public boolean inSteps() {
            return true;
        }
    }

    /**
     * Log-normal about the usual severity, cut off at least and most.
     *
     * <pre>
     *   F(s) = (Φ((ln s − ln u)/σ) − Φ_0)/(Φ_1 − Φ_0),   σ = max(ln(most/u), ln(u/least))/2
     *   u   usual severity, above 0      own unit
     * </pre>
     */
    record Spread(double least, double usual, double most) implements SeverityPrior {
        @Override
        public double severity(double share) {
            double lowest = NormalLaw.below(standard(Math.log(least)));
            double highest = NormalLaw.below(standard(Math.log(most)));
            double level = usual * Math.exp(spread() * NormalLaw.quantile(lowest + share * (highest - lowest)));
            return Math.max(least, Math.min(most, level));
        }

        @Override
        public double below(double severity) {
            return severity <= least ? 0 : severity >= most ? 1 : belowLog(Math.log(severity));
        }

        private double belowLog(double log) {
            double lowest = NormalLaw.below(standard(Math.log(least)));
            double highest = NormalLaw.below(standard(Math.log(most)));
            return (NormalLaw.below(standard(log)) - lowest) / (highest - lowest);
        }

        private double standard(double log) {
            return (log - Math.log(usual)) / spread();
        }

        private double spread() {
            return Math.max(Math.log(most / usual), Math.log(usual / least)) / 2;
        }

        /** Evenly between even steps of share and even steps of the logarithm, so that both common and extreme ones are met. */
        @Override
        public double[] ladder(int steps) {
            double[] places = new double[steps + 1];
            places[0] = least;
            places[steps] = most;
            double low = Math.log(least);
            double span = Math.log(most) - low;
            for (int i = 1; i < steps; i++) {
                double wanted = (double) i / steps;
                double a = 0;
                double b = 1;
                for (int k = 0; k < 40; k++) {
                    double middle = (a + b) / 2;
                    if ((middle + belowLog(low + middle * span)) / 2 < wanted) {
                        a = middle;
                    } else {
                        b = middle;
                    }
                }
                places[i] = Math.exp(low + (a + b) / 2 * span);
            }
            return places;
        }

        @Override
        public boolean inSteps() {
            return false;
        }
    }
}
