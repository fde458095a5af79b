package swashlight.findings.insight;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Parameters;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.fault.Fault;
import swashlight.drive.fault.Faults;
import swashlight.findings.evidence.Unknowns;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Forecast;
import swashlight.findings.expect.Rehearsal;
import swashlight.findings.fit.Cholesky;
import swashlight.findings.reading.Reading;

/**
 * What sets of readings leave unknown about a drive with a little of every common fault.
 *
 * <pre>
 *   r = r_0 + J x + e,   q = q_0 + G x,   x ~ N(0, 1),   e ~ N(0, S)
 *   var q | r = G Gᵀ − G Jᵀ (J Jᵀ + S)⁻¹ J Gᵀ
 * </pre>
 *
 * r: readings, SI unit of each comparison; q: quantities of {@link Wanted}; x: standard deviations of severities (the usual ± half, a belt just slipping ± a fortieth),
 * of everything the description does not know exactly, and of conditions. Slopes by half a deviation either way. Source: linear Gaussian
 * theory. Linearised: what bends, such as a valve that opens, is not in it.
 */
public final class Insight {
    private static final List<String> FAULTS = List.of(
            "pump-face-worn",
            "motor-face-worn",
            "check-a-leaks",
            "check-b-leaks",
            "belt-worn",
            "forward-travel-short",
            "brake-drags",
            "engine-weak");
    private static final String[][] QUOTIENTS = {
        {"climb hot", "level hot"},
        {"climb hot", "climb cold"},
        {"climb hot", "reverse hot"},
        {"roll nose up", "roll nose down"},
        {"input", "engine"},
        {"motor tone", "pump tone"},
    };
    private static final double STEP = 0.5; // standard deviations
    private static final double SPREAD = 0.5; // of a severity, share of it, 1 (own choice)
    private static final double BELT_SPREAD = 0.025; // the same for a belt that just slips, 1
    private static final String BELT = "belt-worn";
    private static final double SLIPPING =
            0.84; // share of grip lost, 1: on the light rider it slips on the climb, so that slip can be learnt

    private final DriveDescription drive;
    private final List<Fault> faults =
            FAULTS.stream().map(key -> Faults.find(key).orElseThrow()).toList();

    public Insight(DriveDescription drive) {
        this.drive = drive;
    }

    /**
     * What one set leaves.
     *
     * @param lesson the readings
     * @param left standard deviation of each wanted quantity, SI unit of its dimension
     */
    public record Left(Lesson lesson, double[] left) {
        public Left {
            left = left.clone();
        }
    }

    /** Every lesson, in their order. */
    public List<Left> lessons() {
        List<Left> all = new ArrayList<>();
        for (Lesson lesson : Lesson.values()) {
            all.add(new Left(lesson, left(lesson.readings())));
        }
        return all;
    }

    /**
     * Two readings of which the quotient is better known than either.
     *
     * @param first above the line
     * @param second below the line
     * @param ofFirst spread of the first reading's number that comes of everything unknown about a machine, share of it, 1
     * @param ofSecond the same of the second, 1
     * @param ofQuotient the same of their quotient, 1
     */
    public record Pair(String first, String second, double ofFirst, double ofSecond, double ofQuotient) {}

    /** What quotients of readings leave out of the account, faults apart. */
    public List<Pair> pairs() {
        List<Pair> pairs = new ArrayList<>();
        Linear linear = new Linear(Lesson.EVERYTHING.readings(), true);
        List<String> labels = Lesson.EVERYTHING.labels();
        for (String[] two : QUOTIENTS) {
            double[] first = linear.shares(labels.indexOf(two[0]));
            double[] second = linear.shares(labels.indexOf(two[1]));
            double[] quotient = new double[first.length];
            for (int j = 0; j < first.length; j++) {
                quotient[j] = first[j] - second[j];
            }
            pairs.add(new Pair(two[0], two[1], length(first), length(second), length(quotient)));
        }
        return pairs;
    }

    private static double length(double[] a) {
        return Math.sqrt(dot(a, a));
    }

    /** Standard deviations of the wanted quantities after some readings, SI unit of each. */
    double[] left(List<Reading> readings) {
        Linear linear = new Linear(readings, false);
        int n = linear.reading.length;
        double[] left = new double[Wanted.values().length];
        double[][] covariance = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                covariance[i][j] = dot(linear.reading[i], linear.reading[j]) + (i == j ? 1 : 0);
                covariance[j][i] = covariance[i][j];
            }
        }
        Cholesky factor = Cholesky.of(covariance).orElseThrow();
        for (int q = 0; q < left.length; q++) {
            double[] across = new double[n];
            for (int i = 0; i < n; i++) {
                across[i] = dot(linear.reading[i], linear.wanted[q]);
            }
            double[] solved = factor.solve(across);
            double variance = dot(linear.wanted[q], linear.wanted[q]) - dot(across, solved);
            left[q] = Math.sqrt(Math.max(0, variance));
        }
        return left;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** Slopes of readings (in their errors) and wanted quantities by every unknown. */
    private final class Linear {
        final double[][] reading;
        final double[][] wanted = new double[Wanted.values().length][];
        private final Rehearsal rehearsal;
        private final Unknowns unknowns;
        private final double[] vector = new double[Parameters.count()];
        private final double full;
        private final boolean sound; // without any fault
        private final Forecast usual;
        private final double[] error; // of each reading, SI unit of its comparison

        Linear(List<Reading> readings, boolean sound) {
            this.sound = sound;
            rehearsal = new Rehearsal(readings.stream().map(Comparison::of).toList());
            unknowns = new Unknowns(drive, rehearsal.errors());
            full = drive.value(UnitParameter.pump(UnitProperty.FULL_SWASH_ANGLE));
            int n = readings.size();
            int count = faults.size() + unknowns.size();
            reading = new double[n][count];
            double[] x = new double[count];
            usual = at(x);
            error = errors(usual, readings);
            for (int q = 0; q < wanted.length; q++) {
                wanted[q] = new double[count];
            }
            for (int j = 0; j < count; j++) {
                x[j] = STEP;
                Forecast up = at(x);
                double[] more = Wanted.all(vector, full);
                x[j] = -STEP;
                Forecast down = at(x);
                double[] less = Wanted.all(vector, full);
                x[j] = 0;
                for (int i = 0; i < n; i++) {
                    reading[i][j] = (up.value(i) - down.value(i)) / (2 * STEP) / error[i];
                }
                for (int q = 0; q < wanted.length; q++) {
                    wanted[q][j] = (more[q] - less[q]) / (2 * STEP);
                }
            }
        }

        /** Change of a reading's number by each unknown that is no fault, share of it, 1. */
        double[] shares(int place) {
            double[] shares = new double[reading[place].length - faults.size()];
            for (int j = 0; j < shares.length; j++) {
                shares[j] = reading[place][faults.size() + j] * error[place] / usual.value(place);
            }
            return shares;
        }

        private Forecast at(double[] x) {
            unknowns.fill(Arrays.copyOfRange(x, faults.size(), x.length), vector);
            for (int f = 0; f < faults.size() && !sound; f++) {
                Fault fault = faults.get(f);
                double level = fault.key().equals(BELT) ? SLIPPING : fault.usual();
                double spread = fault.key().equals(BELT) ? BELT_SPREAD : SPREAD;
                fault.apply(vector, level * (1 + spread * x[f]));
            }
            Forecast forecast = new Forecast(rehearsal.comparisons().size());
            double[] deviations =
                    Arrays.copyOfRange(x, faults.size() + unknowns.parameters(), faults.size() + unknowns.size());
            rehearsal.run(vector, believed -> believed, deviations, forecast);
            return forecast;
        }

        /** Usual errors of the instruments where the readings stand, SI unit of each comparison. */
        private static double[] errors(Forecast usual, List<Reading> readings) {
            double[] error = new double[readings.size()];
            for (int i = 0; i < error.length; i++) {
                Reading asked = readings.get(i);
                Reading there =
                        new Reading(asked.label(), asked.kind(), usual.value(i), OptionalDouble.empty(), asked.setup());
                error[i] = Comparison.of(there).error();
            }
            return error;
        }
    }
}
