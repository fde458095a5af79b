package swashlight.findings.outlook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.cause.Cause;
import swashlight.findings.evidence.CauseMachine;
import swashlight.findings.evidence.Unknowns;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Condition;
import swashlight.findings.expect.Expected;
import swashlight.findings.expect.Forecast;
import swashlight.findings.expect.Rehearsal;
import swashlight.findings.reading.Reading;

/**
 * A reading on many machines of one make, by drawing everything that is not known about them and about the conditions.
 *
 * @param low one machine in twenty reads less, or stands
 * @param middle half read less
 * @param high one in twenty reads more
 * @param instrument usual error of the instrument at the middle (one standard deviation), SI unit of the reading
 * @param settled share of the machines that find a settled state, 1
 * @param sources what the spread comes from, largest first
 * @param conditions stated, and usual where nothing was stated
 */
public record Outlook(
        Expected low,
        Expected middle,
        Expected high,
        double instrument,
        double settled,
        List<Source> sources,
        List<Condition> conditions) {
    private static final double LOW = 0.05; // 1
    private static final double WORTH = 0.02; // share of the variance, 1
    private static final int MOST = 4;

    public Outlook {
        sources = List.copyOf(sources);
        conditions = List.copyOf(conditions);
    }

    /**
     * Where a spread comes from.
     *
     * @param name key of a parameter, or of a condition with its value
     * @param share of the variance, 1, from the correlation
     */
    public record Source(String name, double share) {}

    /**
     * The outlook of a reading whose value does not matter.
     *
     * @param drive as described
     * @param cause what is wrong with it
     * @param severity of each fault, in its own SI unit
     * @param asked the reading
     * @param machines how many
     * @param seed of all chance
     */
    public static Outlook of(
            DriveDescription drive, Cause cause, double[] severity, Reading asked, int machines, long seed) {
        Comparison comparison = Comparison.of(asked);
        Rehearsal rehearsal = new Rehearsal(List.of(comparison));
        Unknowns unknowns = new Unknowns(drive, rehearsal.errors());
        CauseMachine machine = new CauseMachine(cause, unknowns, rehearsal);
        Random chance = new Random(seed);
        Forecast forecast = new Forecast(1);
        double[][] z = new double[machines][unknowns.size()];
        double[] value = new double[machines];
        int count = 0;
        for (int m = 0; m < machines; m++) {
            for (int j = 0; j < unknowns.size(); j++) {
                z[count][j] = chance.nextGaussian();
            }
            machine.predict(severity, z[count], forecast);
            if (forecast.solved(0)) {
                value[count++] = forecast.value(0);
            }
        }
        if (count == 0) {
            Expected none = new Expected.NotSolved("try a smaller stroke, slope or load");
            return new Outlook(
                    none, none, none, 0, 0, List.of(), comparison.conditions().all());
        }
        double[] sorted = Arrays.copyOf(value, count);
        Arrays.sort(sorted);
        double below = quantile(sorted, LOW);
        double half = quantile(sorted, 0.5);
        double above = quantile(sorted, 1 - LOW);
        boolean turned = comparison.told(1) instanceof Expected.Value told && !sameOrder(comparison, told);
        return new Outlook(
                comparison.told(turned ? above : below),
                comparison.told(half),
                comparison.told(turned ? below : above),
                instrument(asked, comparison, half),
                count / (double) machines,
                sources(unknowns, z, value, count),
                comparison.conditions().all());
    }

    /** False where a larger number compared is a smaller one told: a speed told as a time. */
    private static boolean sameOrder(Comparison comparison, Expected.Value one) {
        return comparison.told(2) instanceof Expected.Value two && two.value() > one.value();
    }

    private static double quantile(double[] sorted, double share) {
        return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    }

    private static double instrument(Reading asked, Comparison comparison, double half) {
        return comparison.told(half) instanceof Expected.Value value
                ? asked.kind().usualError(value.value())
                : asked.kind().usualError(0);
    }

    private static List<Source> sources(Unknowns unknowns, double[][] z, double[] value, int count) {
        double mean = 0;
        for (int m = 0; m < count; m++) {
            mean += value[m] / count;
        }
        double square = 0;
        for (int m = 0; m < count; m++) {
            square += (value[m] - mean) * (value[m] - mean);
        }
        List<Source> sources = new ArrayList<>();
        for (int j = 0; j < unknowns.size() && square > 0; j++) {
            double across = 0;
            double own = 0;
            for (int m = 0; m < count; m++) {
                across += z[m][j] * (value[m] - mean);
                own += z[m][j] * z[m][j];
            }
            double share = across * across / (own * square) - 1.0 / count; // less what chance alone would show
            if (share > WORTH) {
                sources.add(new Source(unknowns.name(j), share));
            }
        }
        sources.sort((a, b) -> Double.compare(b.share(), a.share()));
        return sources.subList(0, Math.min(MOST, sources.size()));
    }
}
