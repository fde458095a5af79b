package swashlight.findings.drain;

import java.util.ArrayList;
import java.util.List;
import swashlight.findings.fit.Estimate;
import swashlight.findings.fit.StudentLaw;

/**
 * How delivered flow falls with pressure in one unbroken run, and how much of the fall the case drain explains.
 * <pre>
 *   q + (−q_z) = a − b Δp     least squares, interval widened by the rows' serial correlation
 *   a / (b − b_drain)         the oil's stiffness if the rest were compression alone, Pa
 * </pre>
 */
public final class DeliveryFit {
    private static final double BAR = 1e5;

    private DeliveryFit() {}

    /**
     * The estimates of one run.
     *
     * @param points rows of a test
     * @param run which run
     * @param assumed meter facts
     */
    public static List<Estimate> of(List<DrainPoint> points, int run, DrainAssumptions assumed) {
        List<double[]> delivered = new ArrayList<>();
        List<double[]> drained = new ArrayList<>();
        for (DrainPoint point : points) {
            if (point.run() == run) {
                double bar = point.pressureDifference() / BAR;
                double flow = (point.deliveredFlow() - assumed.deliveryZero()) / DrainAssumptions.LITRE_PER_MINUTE;
                delivered.add(new double[] {bar, flow});
                if (point.drainFlow() >= assumed.meterStart()) {
                    drained.add(new double[] {bar, point.drainFlow() / DrainAssumptions.LITRE_PER_MINUTE});
                }
            }
        }
        double[] fall = line(delivered);
        double[] drain = line(drained);
        double rest = -fall[1] - drain[1];
        double restWidth = Math.sqrt(fall[2] * fall[2] + drain[2] * drain[2]);
        return List.of(
                Estimate.symmetric(
                        "delivery-at-no-pressure",
                        fall[0],
                        fall[3],
                        "L/min",
                        "delivered flow less the meter's zero, carried to no pressure"),
                Estimate.symmetric(
                        "delivery-fall", -100 * fall[1], 100 * fall[2], "L/min per 100 bar", "fall of delivered flow"),
                Estimate.symmetric(
                        "drain-rise",
                        100 * drain[1],
                        100 * drain[2],
                        "L/min per 100 bar",
                        "rise of case-drain flow where the meter runs"),
                Estimate.symmetric(
                        "fall-not-drained",
                        100 * rest,
                        100 * restWidth,
                        "L/min per 100 bar",
                        "fall that does not leave by the case drain: compression, inner leak, speed droop"));
    }

    /** Intercept, slope, 95 % half widths of slope and intercept. */
    private static double[] line(List<double[]> rows) {
        int n = rows.size();
        if (n < 5) {
            throw new IllegalArgumentException("a run has " + n + " usable rows; 5 or more are needed for a line");
        }
        double meanX = 0;
        double meanY = 0;
        for (double[] row : rows) {
            meanX += row[0] / n;
            meanY += row[1] / n;
        }
        double sxx = 0;
        double sxy = 0;
        for (double[] row : rows) {
            sxx += (row[0] - meanX) * (row[0] - meanX);
            sxy += (row[0] - meanX) * (row[1] - meanY);
        }
        double slope = sxy / sxx;
        double squares = 0;
        double products = 0;
        double before = 0;
        for (int i = 0; i < n; i++) {
            double left = rows.get(i)[1] - meanY - slope * (rows.get(i)[0] - meanX);
            squares += left * left;
            products += i > 0 ? left * before : 0;
            before = left;
        }
        double correlation = Math.max(0, Math.min(0.95, products / squares + 4.0 / n));
        double repeated = (1 + correlation) / (1 - correlation);
        double factor = StudentLaw.factor(0.95, Math.max(4, n / repeated - 2));
        double variance = squares / (n - 2) * repeated;
        return new double[] {
            meanY - slope * meanX,
            slope,
            factor * Math.sqrt(variance / sxx),
            factor * Math.sqrt(variance * (1.0 / n + meanX * meanX / sxx))
        };
    }
}
