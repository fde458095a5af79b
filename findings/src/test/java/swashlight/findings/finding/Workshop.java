package swashlight.findings.finding;

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
import swashlight.findings.evidence.CauseMachine;
import swashlight.findings.evidence.Unknowns;
import swashlight.findings.evidence.WildLaw;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Forecast;
import swashlight.findings.expect.Rehearsal;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.Setup;
import swashlight.findings.reading.SetupDraft;

/** Machines of the model, with whatever is wrong with them, measured as a workshop would: the truth behind the tests. */
final class Workshop {
    static final DriveDescription DRIVE = TypicalDrive.complete("typical", true, Map.of());

    private static final List<Reading> ASKED = List.of(
            asked("level", ReadingKind.GROUND_SPEED, setup(1, 1, 333.15, 0)),
            asked("climb", ReadingKind.GROUND_SPEED, setup(1, 1, 343.15, 0.17)),
            asked("reverse climb", ReadingKind.GROUND_SPEED, setup(-1, 1, 343.15, -0.17)),
            asked("engine on the climb", ReadingKind.ENGINE_SPEED, setup(1, 1, 343.15, 0.17)),
            asked("input on the climb", ReadingKind.INPUT_SPEED, setup(1, 1, 343.15, 0.17)),
            asked("roll nose up", ReadingKind.ROLL_SPEED, setup(0, -1, 343.15, 0.17)),
            asked("roll nose down", ReadingKind.ROLL_SPEED, setup(0, -1, 343.15, -0.17)));

    private Workshop() {}

    /**
     * Measures a machine with a cause of some severities (own units); everything unknown and every error drawn. Nothing when it cannot climb, for
     * then nobody writes down a speed.
     */
    static Optional<MachineCase> machine(Cause cause, double[] severity, Random chance) {
        List<Comparison> comparisons = ASKED.stream().map(Comparison::of).toList();
        Rehearsal rehearsal = new Rehearsal(comparisons);
        Unknowns unknowns = new Unknowns(DRIVE, rehearsal.errors());
        double[] z = new double[unknowns.size()];
        for (int j = 0; j < z.length; j++) {
            z[j] = chance.nextGaussian();
        }
        Forecast forecast = new Forecast(ASKED.size());
        new CauseMachine(cause, unknowns, rehearsal).predict(severity, z, forecast);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < ASKED.size(); i++) {
            Reading asked = ASKED.get(i);
            boolean climbs = asked.kind() != ReadingKind.GROUND_SPEED || forecast.value(i) > 0.1;
            if (!climbs) {
                return Optional.empty();
            }
            if (forecast.solved(i)) {
                double error = asked.kind().usualError(forecast.value(i));
                double wild = chance.nextDouble() < WildLaw.SHARE ? WildLaw.WIDTH : 1;
                double value = Math.abs(forecast.value(i) + wild * error * chance.nextGaussian());
                readings.add(new Reading(asked.label(), asked.kind(), value, OptionalDouble.of(error), asked.setup()));
            }
        }
        return Optional.of(of(readings));
    }

    static MachineCase of(List<Reading> readings) {
        return new MachineCase("invented", true, "", DRIVE, readings, Set.of(), Set.of());
    }

    private static Reading asked(String label, ReadingKind kind, Setup setup) {
        return new Reading(label, kind, 1, OptionalDouble.empty(), setup);
    }

    private static Setup setup(double stroke, double throttle, double oil, double slope) {
        SetupDraft draft = new SetupDraft().stroke(stroke).oil(oil).slope(slope).backwards(slope > 0 && stroke == 0);
        return throttle > 0 ? draft.fullThrottle().done() : draft.done();
    }
}
