package swashlight.findings.belief;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.cause.Cause;
import swashlight.findings.evidence.CauseEvidence;
import swashlight.findings.evidence.Posterior;
import swashlight.findings.evidence.Unknowns;
import swashlight.findings.evidence.Weighed;

/**
 * Machines of equal weight that stand for what is believed: each cause by its probability, within it machines by their weights, both by even
 * steps through the whole (systematic resampling, Kitagawa 1996, from memory), so that a cause of probability P has N P machines, give or
 * take one.
 */
public final class Belief {
    private final DriveDescription drive;
    private final Unknowns unknowns;
    private final List<Suspect> suspects;

    private Belief(DriveDescription drive, Unknowns unknowns, List<Suspect> suspects) {
        this.drive = drive;
        this.unknowns = unknowns;
        this.suspects = List.copyOf(suspects);
    }

    /** So many machines from a posterior with its unknowns; the seed decides where the even steps begin. */
    public static Belief of(DriveDescription drive, Unknowns unknowns, Posterior posterior, int machines, long seed) {
        List<Suspect> suspects = new ArrayList<>(machines);
        double passed = 0;
        double wanted = new Random(seed).nextDouble();
        for (int h = 0; h < posterior.causes().size(); h++) {
            CauseEvidence evidence = posterior.causes().get(h);
            double[] shares = evidence.weighed().shares();
            double probability = posterior.probability(h);
            for (int m = 0; m < shares.length && suspects.size() < machines; m++) {
                passed += probability * shares[m] * machines;
                while (wanted < passed && suspects.size() < machines) {
                    suspects.add(suspect(evidence.cause(), evidence.weighed(), m));
                    wanted++;
                }
            }
        }
        return new Belief(drive, unknowns, suspects);
    }

    /** Of machines that are given, in the order of these unknowns. */
    public static Belief of(DriveDescription drive, Unknowns unknowns, List<Suspect> suspects) {
        return new Belief(drive, unknowns, suspects);
    }

    private static Suspect suspect(Cause cause, Weighed weighed, int place) {
        return new Suspect(cause, weighed.severity(place), weighed.nuisance(place));
    }

    /** The sound drive as described. */
    public DriveDescription drive() {
        return drive;
    }

    /** What the deviations of the suspects deviate: parameters first, then errors of the case's conditions. */
    public Unknowns unknowns() {
        return unknowns;
    }

    /** The machines, those of one cause together. */
    public List<Suspect> suspects() {
        return suspects;
    }

    /** How many. */
    public int size() {
        return suspects.size();
    }

    /** Fills the values (index order, SI) of a suspect without its faults. */
    public void sound(int suspect, double[] vector) {
        unknowns.fill(suspects.get(suspect).unknowns(), vector);
    }

    /** Fills the values (index order, SI) of a suspect as it stands. */
    public void asItStands(int suspect, double[] vector) {
        sound(suspect, vector);
        Suspect one = suspects.get(suspect);
        one.cause().apply(vector, one.severity());
    }

    /**
     * A suspect's deviations (standard deviations) in the order of other unknowns of the same drive: parameters as they are, errors of
     * conditions as the case has them where it shares them, else drawn.
     */
    public double[] deviations(int suspect, Unknowns others, Random chance) {
        double[] own = suspects.get(suspect).unknowns();
        double[] carried = new double[others.size()];
        System.arraycopy(own, 0, carried, 0, others.parameters());
        Map<String, Double> shared = new HashMap<>();
        for (int j = unknowns.parameters(); j < unknowns.size(); j++) {
            shared.put(unknowns.name(j), own[j]);
        }
        for (int j = others.parameters(); j < carried.length; j++) {
            Double value = shared.get(others.name(j));
            carried[j] = value == null ? chance.nextGaussian() : value;
        }
        return carried;
    }
}
