package swashlight.findings.study;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.belief.Suspect;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Causes;
import swashlight.findings.cause.Lore;
import swashlight.findings.evidence.CauseMachine;
import swashlight.findings.evidence.Unknowns;
import swashlight.findings.evidence.WildLaw;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Forecast;
import swashlight.findings.expect.Rehearsal;
import swashlight.findings.reading.Look;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;

/**
 * Draws machines of one make: a cause by its odds, severities and all unknowns from their priors, readings with instrument errors (now and then
 * a wild one), looks by their table. The same number always gives the same machine.
 */
public final class Simulator {
    private static final Lore LORE = Lore.seeds();
    private static final long STRIDE = 0x9E3779B97F4A7C15L; // keeps the streams of neighbouring numbers apart
    private static final double LOOKED = 0.4; // chance that somebody noted whether a look is there, 1 (own choice)

    private final DriveDescription drive;
    private final long seed;

    /** Of a drive, from a seed. */
    public Simulator(DriveDescription drive, long seed) {
        this.drive = drive;
        this.seed = seed;
    }

    /** The machine of a number. */
    public Simulated draw(int number) {
        Random chance = new Random(seed * 1_000_003L + number * STRIDE);
        Visit visit = Visit.values()[chance.nextInt(Visit.values().length)];
        Cause cause = cause(chance);
        double[] severity = cause.parts().stream()
                .mapToDouble(part -> part.severity().severity(chance.nextDouble()))
                .toArray();
        List<Reading> asked = visit.asked();
        Rehearsal rehearsal = new Rehearsal(asked.stream().map(Comparison::of).toList());
        Unknowns unknowns = new Unknowns(drive, rehearsal.errors());
        double[] z = new double[unknowns.size()];
        for (int j = 0; j < z.length; j++) {
            z[j] = chance.nextGaussian();
        }
        Suspect truth = new Suspect(cause, severity, z);
        Forecast forecast = new Forecast(asked.size());
        new CauseMachine(cause, unknowns, rehearsal).predict(severity, z, forecast);
        Map<Integer, Double> wild = new TreeMap<>();
        List<Reading> readings = measured(asked, forecast, chance, wild);
        Set<Look> seen = EnumSet.noneOf(Look.class);
        Set<Look> notSeen = EnumSet.noneOf(Look.class);
        for (Look look : Look.values()) {
            if (chance.nextDouble() < LOOKED) {
                (chance.nextDouble() < LORE.chance(look, cause) ? seen : notSeen).add(look);
            }
        }
        String name = drive.name() + " " + number;
        MachineCase machine = new MachineCase(name, true, "", drive, readings, seen, notSeen);
        return new Simulated(truth, unknowns, wild, machine);
    }

    private static Cause cause(Random chance) {
        double all = Causes.all().stream().mapToDouble(Cause::odds).sum();
        double wanted = all * chance.nextDouble();
        for (Cause cause : Causes.all()) {
            wanted -= cause.odds();
            if (wanted <= 0) {
                return cause;
            }
        }
        return Causes.all().get(0);
    }

    private static List<Reading> measured(
            List<Reading> asked, Forecast forecast, Random chance, Map<Integer, Double> wild) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            double noise = chance.nextGaussian();
            boolean slips = chance.nextDouble() < WildLaw.SHARE;
            if (forecast.solved(i)) {
                double off = slips ? WildLaw.WIDTH * noise : noise;
                if (slips) {
                    wild.put(readings.size(), off);
                }
                readings.add(read(asked.get(i), forecast.value(i), off));
            }
        }
        return readings;
    }

    /** A true value (SI unit of the kind) as read, so many standard errors off. */
    private static Reading read(Reading asked, double truth, double off) {
        double error = asked.kind().usualError(truth);
        double value = Math.max(0, truth + error * off);
        return new Reading(asked.label(), asked.kind(), value, OptionalDouble.of(error), asked.setup());
    }
}
