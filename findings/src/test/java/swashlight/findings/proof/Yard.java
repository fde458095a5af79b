package swashlight.findings.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.TypicalDrive;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Causes;
import swashlight.findings.evidence.CauseMachine;
import swashlight.findings.evidence.Unknowns;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Forecast;
import swashlight.findings.expect.Rehearsal;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.Setup;

/** One machine read before and after a repair, on a warm day and a cooler one: the truth behind the tests. */
final class Yard {
    static final DriveDescription DRIVE = TypicalDrive.complete("typical", true, Map.of());
    static final Cause HEALTHY = Causes.find(Cause.HEALTHY).orElseThrow();

    private Yard() {}

    static List<Reading> asked(double oil, double slope) {
        List<Reading> asked = new ArrayList<>();
        asked.add(asked("level", ReadingKind.GROUND_SPEED, 1, oil, 0));
        asked.add(asked("climb", ReadingKind.GROUND_SPEED, 1, oil, slope));
        asked.add(asked("reverse climb", ReadingKind.GROUND_SPEED, -1, oil, -slope));
        asked.add(asked("input on the climb", ReadingKind.INPUT_SPEED, 1, oil, slope));
        asked.add(asked("engine on the climb", ReadingKind.ENGINE_SPEED, 1, oil, slope));
        asked.add(asked("roll nose down", ReadingKind.ROLL_SPEED, 0, oil, -slope));
        return asked;
    }

    private static Reading asked(String label, ReadingKind kind, double stroke, double oil, double slope) {
        Setup setup = new Setup(
                OptionalDouble.of(stroke),
                stroke == 0 ? OptionalDouble.empty() : OptionalDouble.of(1),
                OptionalDouble.empty(),
                OptionalDouble.of(oil),
                OptionalDouble.empty(),
                OptionalDouble.of(slope),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                false,
                false);
        return new Reading(label, kind, 1, OptionalDouble.empty(), setup);
    }

    /** Deviations of one machine, with room for the errors of any readings. */
    static double[] machine(Random chance) {
        double[] z = new double[400];
        for (int j = 0; j < z.length; j++) {
            z[j] = chance.nextGaussian();
        }
        return z;
    }

    /** Reads a machine with a cause; errors of conditions and instruments drawn. */
    static MachineCase read(
            double[] machine, Cause cause, double[] severity, List<Reading> asked, Random chance, double noise) {
        List<Comparison> comparisons = asked.stream().map(Comparison::of).toList();
        Rehearsal rehearsal = new Rehearsal(comparisons);
        Unknowns unknowns = new Unknowns(DRIVE, rehearsal.errors());
        double[] z = new double[unknowns.size()];
        for (int j = 0; j < z.length; j++) {
            z[j] = j < unknowns.parameters() ? machine[j] : noise * chance.nextGaussian();
        }
        Forecast forecast = new Forecast(asked.size());
        new CauseMachine(cause, unknowns, rehearsal).predict(severity, z, forecast);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            Reading one = asked.get(i);
            double error = one.kind().usualError(forecast.value(i));
            double value = Math.abs(forecast.value(i) + noise * error * chance.nextGaussian());
            if (forecast.solved(i)) {
                readings.add(new Reading(one.label(), one.kind(), value, OptionalDouble.of(error), one.setup()));
            }
        }
        return new MachineCase("invented", true, "", DRIVE, readings, Set.of(), Set.of());
    }
}
