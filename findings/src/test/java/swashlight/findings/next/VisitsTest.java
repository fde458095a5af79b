package swashlight.findings.next;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.TypicalDrive;
import swashlight.findings.belief.Belief;
import swashlight.findings.cause.Lore;
import swashlight.findings.choice.Hill;
import swashlight.findings.choice.Ledger;
import swashlight.findings.cost.Prices;
import swashlight.findings.evidence.Inference;
import swashlight.findings.evidence.InferenceOptions;
import swashlight.findings.evidence.Posterior;
import swashlight.findings.evidence.Unknowns;

/**
 * Does choosing readings by money pay, over a population drawn from the model? Same machines and same luck for every rule. More machines, and the
 * figures: {@code -DargLine="-Dvisits=1000 -Dtold=true"}.
 */
class VisitsTest {
    private static final DriveDescription DRIVE = TypicalDrive.complete("typical", true, Map.of());
    private static final int CROWD = 3000;
    private static final int MACHINES = Integer.getInteger("visits", 150);

    @Test
    void moneyBeatsCheapFirstAndInformation() {
        Posterior prior = new Inference(
                        new InferenceOptions(
                                1,
                                16,
                                8,
                                8,
                                8,
                                96,
                                0,
                                0.01,
                                60,
                                InferenceOptions.usual(1).sampler()),
                        Lore.seeds())
                .weigh(DRIVE, List.of(), Set.of(), Set.of());
        Belief belief = Belief.of(DRIVE, new Unknowns(DRIVE, List.of()), prior, CROWD, 5);
        Prices prices = Prices.invented();
        Ledger ledger = Ledger.of(belief, prices, Hill.usual());
        Visits visits = new Visits(belief, ledger, prices, 7);
        Map<Visits.Rule, double[]> costs = new EnumMap<>(Visits.Rule.class);
        Map<Visits.Rule, Double> readings = new EnumMap<>(Visits.Rule.class);
        double known = 0;
        double exchange = 0;
        int[] truths = new Random(11).ints(MACHINES, 0, CROWD).toArray();
        for (Visits.Rule rule : Visits.Rule.values()) {
            double[] each = new double[MACHINES];
            for (int i = 0; i < MACHINES; i++) {
                each[i] = visits.visit(truths[i], rule, 13);
                readings.merge(rule, visits.readings() / (double) MACHINES, Double::sum);
            }
            costs.put(rule, each);
        }
        for (int truth : truths) {
            known += visits.known(truth) / MACHINES;
            exchange += visits.always(truth, "exchange-drive") / MACHINES;
        }
        StringBuilder told = new StringBuilder("known " + known + ", always exchange " + exchange + "\n");
        double[] zero = new double[MACHINES];
        for (Visits.Rule rule : Visits.Rule.values()) {
            told.append(rule).append(' ').append(mean(costs.get(rule), zero)).append(" ± ");
            told.append(error(costs.get(rule), zero)).append(", readings ").append(readings.get(rule));
            told.append(", dearer than money ").append(mean(costs.get(rule), costs.get(Visits.Rule.MONEY)));
            told.append(" ± ")
                    .append(error(costs.get(rule), costs.get(Visits.Rule.MONEY)))
                    .append('\n');
        }
        String report = told.toString();
        for (Visits.Rule rule : Visits.Rule.values()) {
            if (rule != Visits.Rule.MONEY) {
                double more = mean(costs.get(rule), costs.get(Visits.Rule.MONEY));
                assertThat(more).as(report).isGreaterThan(2 * error(costs.get(rule), costs.get(Visits.Rule.MONEY)));
            }
        }
        if (Boolean.getBoolean("told")) {
            System.out.println(report);
        }
    }

    private static double mean(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] - b[i];
        }
        return sum / a.length;
    }

    private static double error(double[] a, double[] b) {
        double mean = mean(a, b);
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += (a[i] - b[i] - mean) * (a[i] - b[i] - mean);
        }
        return Math.sqrt(sum / (a.length * (a.length - 1.0)));
    }
}
