package swashlight.findings.losses;

import swashlight.findings.fit.Cholesky;
import swashlight.findings.fit.Estimate;
import swashlight.findings.fit.StudentLaw;

/**
 * Derived capacity in the manner of ISO 8426: the slope of flow on speed, carried to no pressure difference.
 * <pre>
 *   Q = V n + a + b Δp + c n Δp      least squares over all rows;  V at Δp = 0 is the answer
 *
 *   Q  flow    m³/s      n  speed times stroke share   rev/s      V  m³/rev
 * </pre>
 * Needs two speeds; with one pressure only, the two terms with Δp are left out and the answer holds at that pressure.
 * Source: ISO 8426 (idea; wording not seen).
 */
public final class DerivedCapacity {
    private static final double TURN = 2 * Math.PI;

    private DerivedCapacity() {}

    /**
     * The derived capacity of a tested unit, cm³/rev.
     *
     * @throws IllegalArgumentException with fewer than two speeds or too few rows
     */
    public static Estimate of(BenchRun test) {
        int n = test.points().size();
        double fastest = 0;
        double slowest = Double.POSITIVE_INFINITY;
        double highest = 0;
        double lowest = Double.POSITIVE_INFINITY;
        for (BenchPoint point : test.points()) {
            fastest = Math.max(fastest, point.speed() * point.share());
            slowest = Math.min(slowest, point.speed() * point.share());
            highest = Math.max(highest, point.pressureDifference());
            lowest = Math.min(lowest, point.pressureDifference());
        }
        int columns = highest > 1.05 * lowest + 1e4 ? 4 : 2;
        if (fastest < 1.05 * slowest || n < columns + 2) {
            throw new IllegalArgumentException("derived capacity: " + n + " rows at speeds " + slowest + " to "
                    + fastest + " rad/s; two speeds that differ and " + (columns + 2) + " rows or more are needed");
        }
        double[][] normal = new double[columns][columns];
        double[] moment = new double[columns];
        double total = 0;
        for (BenchPoint point : test.points()) {
            double speed = point.speed() * point.share() / fastest;
            double pressure = highest > 0 ? point.pressureDifference() / highest : 0;
            double[] row = {speed, 1, pressure, speed * pressure};
            for (int a = 0; a < columns; a++) {
                moment[a] += row[a] * point.flow();
                for (int b = 0; b < columns; b++) {
                    normal[a][b] += row[a] * row[b];
                }
            }
            total += point.flow() * point.flow();
        }
        Cholesky factor = Cholesky.of(normal)
                .orElseThrow(() -> new IllegalArgumentException(
                        "derived capacity: speeds and pressures do not vary apart; vary speed at each pressure"));
        double[] solved = factor.solve(moment);
        for (int a = 0; a < columns; a++) {
            total -= solved[a] * moment[a];
        }
        double variance = Math.max(total, 0) / (n - columns) * factor.inverse()[0][0];
        double toCubicCentimetres = TURN / fastest * 1e6;
        double half = StudentLaw.factor(0.95, n - columns) * Math.sqrt(variance);
        return Estimate.symmetric(
                "derived-capacity",
                solved[0] * toCubicCentimetres,
                half * toCubicCentimetres,
                "cm³/rev",
                "slope of flow on speed, carried to no pressure difference (manner of ISO 8426)");
    }
}
