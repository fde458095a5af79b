package swashlight.findings.study;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.cause.Action;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Causes;
import swashlight.findings.cause.Lore;
import swashlight.findings.evidence.CauseMachine;
import swashlight.findings.evidence.Unknowns;
import swashlight.findings.evidence.WildLaw;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Forecast;
import swashlight.findings.expect.Rehearsal;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;

/**
 * The plainest possible way to find: a large crowd of machines drawn from the prior, each weighed by how likely it shows what was read. No line, no
 * anchor, no aim: with enough machines it is the best that anyone can know under the model. Only for few readings.
 */
final class Crowd {
    private static final Lore LORE = Lore.seeds();

    private final List<String> labels;
    private final int[] cause;
    private final float[][] value; // by machine, then reading
    private final boolean[][] solved;

    /** So many machines on one kind of visit. */
    Crowd(DriveDescription drive, Visit visit, int machines, long seed) {
        List<Reading> asked = visit.asked();
        labels = asked.stream().map(Reading::label).toList();
        Rehearsal rehearsal = new Rehearsal(asked.stream().map(Comparison::of).toList());
        Unknowns unknowns = new Unknowns(drive, rehearsal.errors());
        List<CauseMachine> kinds = Causes.all().stream()
                .map(each -> new CauseMachine(each, unknowns, rehearsal))
                .toList();
        double all = Causes.all().stream().mapToDouble(LORE::odds).sum();
        Random chance = new Random(seed);
        Forecast forecast = new Forecast(asked.size());
        cause = new int[machines];
        value = new float[machines][asked.size()];
        solved = new boolean[machines][asked.size()];
        double[] z = new double[unknowns.size()];
        int h = 0;
        double passed = LORE.odds(Causes.all().get(0)) / all;
        for (int m = 0; m < machines; m++) {
            while (h < kinds.size() - 1 && (m + 0.5) / machines > passed) {
                passed += LORE.odds(Causes.all().get(++h)) / all;
            }
            cause[m] = h;
            double[] severity = Causes.all().get(h).parts().stream()
                    .mapToDouble(part -> part.severity().severity(chance.nextDouble()))
                    .toArray();
            for (int j = 0; j < z.length; j++) {
                z[j] = chance.nextGaussian();
            }
            kinds.get(h).predict(severity, z, forecast);
            for (int i = 0; i < asked.size(); i++) {
                value[m][i] = (float) forecast.value(i);
                solved[m][i] = forecast.solved(i);
            }
        }
    }

    /**
     * What the crowd believes of a case.
     *
     * @param chances that each action is needed, 1
     * @param errors of them from so few machines, 1
     * @param effective machines, 1
     */
    record Belief(Map<Action, Double> chances, Map<Action, Double> errors, double effective) {
        /** The likeliest action. */
        Action likeliest() {
            Action best = Action.LEAVE_ALONE;
            for (Action action : Action.values()) {
                best = chances.get(action) > chances.get(best) ? action : best;
            }
            return best;
        }
    }

    /** Weighs every machine of the crowd on a case of this visit. */
    Belief of(MachineCase machine) {
        List<Comparison> readings =
                machine.readings().stream().map(Comparison::of).toList();
        int[] column = readings.stream()
                .mapToInt(each -> labels.indexOf(each.reading().label()))
                .toArray();
        Set<ReadingKind> kinds =
                readings.stream().map(each -> each.reading().kind()).collect(Collectors.toSet());
        double[] looks = Causes.all().stream()
                .mapToDouble(each -> LORE.chance(machine.seen(), machine.notSeen(), kinds, each))
                .toArray();
        double[] weight = new double[cause.length];
        for (int m = 0; m < weight.length; m++) {
            double log = 0;
            for (int i = 0; i < column.length; i++) {
                Comparison reading = readings.get(i);
                log += solved[m][column[i]]
                        ? WildLaw.logDensity((reading.value() - value[m][column[i]]) / reading.error())
                        : WildLaw.logUnsolved();
            }
            weight[m] = looks[cause[m]] * Math.exp(log);
        }
        return believed(weight);
    }

    private Belief believed(double[] weight) {
        double sum = Arrays.stream(weight).sum();
        double squares = Arrays.stream(weight).map(each -> each * each).sum();
        Map<Action, Double> chances = new EnumMap<>(Action.class);
        Map<Action, Double> errors = new EnumMap<>(Action.class);
        for (Action action : Action.values()) {
            boolean[] needs = new boolean[Causes.all().size()];
            for (int h = 0; h < needs.length; h++) {
                Cause each = Causes.all().get(h);
                needs[h] = each.actions().contains(action);
            }
            double part = 0;
            for (int m = 0; m < weight.length; m++) {
                part += needs[cause[m]] ? weight[m] : 0;
            }
            double chance = part / sum;
            double square = 0;
            for (int m = 0; m < weight.length; m++) {
                double off = weight[m] * ((needs[cause[m]] ? 1 : 0) - chance);
                square += off * off;
            }
            chances.put(action, chance);
            errors.put(action, Math.sqrt(square) / sum);
        }
        return new Belief(chances, errors, sum * sum / squares);
    }
}
