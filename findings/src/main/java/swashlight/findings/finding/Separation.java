package swashlight.findings.finding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.cause.Action;
import swashlight.findings.evidence.CauseEvidence;
import swashlight.findings.evidence.CauseMachine;
import swashlight.findings.evidence.Posterior;
import swashlight.findings.evidence.Unknowns;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Forecast;
import swashlight.findings.expect.Rehearsal;
import swashlight.findings.reading.Reading;

/**
 * Which further reading would tell the remaining actions apart: one step ahead, each leading cause giving the reading a normal law.
 *
 * <pre>
 *   gain = H(action) − ∫ H(action | y) p(y) dy      nat
 *   p(y | cause) = N(μ, √(τ² + σ²))                  μ, τ from machines drawn for the cause, σ the instrument's usual error
 * </pre>
 *
 * Source: expected information (Lindley 1956, from memory).
 */
final class Separation {
    private static final double LEADING = 0.01; // probability, 1
    private static final int MOST_CAUSES = 8;
    private static final int MACHINES = 20; // per cause
    private static final int STEPS = 160; // of the integral
    private static final double TAILS = 4; // standard deviations
    private static final double WORTH = 0.005; // nat

    private final DriveDescription drive;
    private final Unknowns known;
    private final List<CauseEvidence> causes = new ArrayList<>();
    private final double[] probability;
    private final long seed;

    Separation(DriveDescription drive, Unknowns known, Posterior posterior, List<Integer> order, long seed) {
        this.drive = drive;
        this.known = known;
        this.seed = seed;
        List<Double> shares = new ArrayList<>();
        for (int h : order) {
            if (causes.size() < MOST_CAUSES && posterior.probability(h) >= LEADING) {
                causes.add(posterior.causes().get(h));
                shares.add(posterior.probability(h));
            }
        }
        double sum = shares.stream().mapToDouble(Double::doubleValue).sum();
        probability = shares.stream().mapToDouble(share -> share / sum).toArray();
    }

    List<NextReading> next(int most) {
        List<NextReading> all = new ArrayList<>();
        for (Candidate candidate : Candidate.of(drive)) {
            double gain = gain(candidate);
            if (gain > WORTH) {
                all.add(new NextReading(candidate.key(), candidate.words(), candidate.kind(), candidate.setup(), gain));
            }
        }
        all.sort((a, b) -> Double.compare(b.gain(), a.gain()));
        return all.subList(0, Math.min(most, all.size()));
    }

    private double gain(Candidate candidate) {
        Reading asked = new Reading(candidate.key(), candidate.kind(), 1, OptionalDouble.empty(), candidate.setup());
        Comparison comparison = Comparison.of(asked);
        Rehearsal rehearsal = new Rehearsal(List.of(comparison));
        Unknowns unknowns = new Unknowns(drive, rehearsal.errors());
        double[] mean = new double[causes.size()];
        double[] spread = new double[mean.length];
        for (int h = 0; h < mean.length; h++) {
            CauseMachine machine = new CauseMachine(causes.get(h).cause(), unknowns, rehearsal);
            law(causes.get(h), machine, unknowns, comparison, h, mean, spread);
        }
        return information(mean, spread);
    }

    private void law(
            CauseEvidence cause,
            CauseMachine machine,
            Unknowns unknowns,
            Comparison comparison,
            int place,
            double[] mean,
            double[] spread) {
        Random chance = new Random(seed);
        Forecast forecast = new Forecast(1);
        double[] cumulative = cause.weighed().shares();
        double[] z = new double[unknowns.size()];
        double sum = 0;
        double square = 0;
        int count = 0;
        int m = 0;
        double passed = cumulative[0];
        for (int i = 0; i < MACHINES; i++) {
            double wanted = (i + 0.5) / MACHINES;
            while (m < cumulative.length - 1 && passed < wanted) {
                passed += cumulative[++m];
            }
            carry(cause.weighed().nuisance(m), unknowns, z, chance);
            machine.predict(cause.weighed().severity(m), z, forecast);
            if (forecast.solved(0)) {
                sum += forecast.value(0);
                square += forecast.value(0) * forecast.value(0);
                count++;
            }
        }
        mean[place] = count > 0 ? sum / count : 0;
        double scatter = count > 1 ? Math.max(0, square / count - mean[place] * mean[place]) : 0;
        double error = instrument(comparison, mean[place]);
        spread[place] = Math.sqrt(scatter + error * error);
    }

    /** Parameters as the machine has them; errors of conditions too where the case shares them, else drawn. */
    private void carry(double[] machine, Unknowns unknowns, double[] z, Random chance) {
        System.arraycopy(machine, 0, z, 0, unknowns.parameters());
        Map<String, Double> shared = new HashMap<>();
        for (int j = known.parameters(); j < known.size(); j++) {
            shared.put(known.name(j), machine[j]);
        }
        for (int j = unknowns.parameters(); j < z.length; j++) {
            Double value = shared.get(unknowns.name(j));
            z[j] = value == null ? chance.nextGaussian() : value;
        }
    }

    /** The instrument's usual error where the comparison stands at a value, both SI unit of the comparison. */
    private static double instrument(Comparison comparison, double value) {
        Reading asked = comparison.reading();
        double told = comparison.told(Math.max(Math.abs(value), 1e-4))
                        instanceof swashlight.findings.expect.Expected.Value number
                ? number.value()
                : 0;
        Reading there = new Reading(asked.label(), asked.kind(), told, OptionalDouble.empty(), asked.setup());
        return Comparison.of(there).error();
    }

    private double information(double[] mean, double[] spread) {
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (int h = 0; h < mean.length; h++) {
            low = Math.min(low, mean[h] - TAILS * spread[h]);
            high = Math.max(high, mean[h] + TAILS * spread[h]);
        }
        double[] prior = new double[Action.values().length];
        double[] joint = new double[prior.length];
        double gain = 0;
        for (int h = 0; h < mean.length; h++) {
            prior[causes.get(h).cause().action().ordinal()] += probability[h];
        }
        for (int h = 0; h < mean.length; h++) {
            double from = mean[h] - TAILS * spread[h];
            double step = 2 * TAILS * spread[h] / STEPS;
            for (int i = 0; i < STEPS; i++) {
                double y = from + (i + 0.5) * step;
                double weight = step * density(y, mean[h], spread[h]) * probability[h];
                java.util.Arrays.fill(joint, 0);
                double all = 0;
                for (int g = 0; g < mean.length; g++) {
                    double part = probability[g] * density(y, mean[g], spread[g]);
                    joint[causes.get(g).cause().action().ordinal()] += part;
                    all += part;
                }
                int own = causes.get(h).cause().action().ordinal();
                gain += all > 0 && joint[own] > 0 ? weight * Math.log(joint[own] / all / prior[own]) : 0;
            }
        }
        return low < high ? Math.max(0, gain) : 0;
    }

    private static double density(double y, double mean, double spread) {
        double z = (y - mean) / spread;
        return Math.exp(-0.5 * z * z) / (spread * 2.5066282746310002);
    }
}
