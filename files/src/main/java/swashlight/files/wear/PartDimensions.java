package swashlight.files.wear;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.wear.Gauge;
import swashlight.findings.wear.Measured;
import swashlight.findings.wear.WearPart;

/** The dimensions among the readings of a case, as measured parts. A case names numbers of the drive themselves, so no shape is open. */
final class PartDimensions {
    private PartDimensions() {}

    static List<Measured> of(MachineCase machine) {
        double[] described = machine.drive().vector();
        Map<WearPart, List<Measured>> all = new LinkedHashMap<>();
        for (Reading reading : machine.readings()) {
            if (reading.kind() == ReadingKind.PART_DIMENSION) {
                for (WearPart part : WearPart.all()) {
                    if (reading.setup().part().equals(java.util.Optional.of(part.moved()))) {
                        all.computeIfAbsent(part, each -> new ArrayList<>()).add(measured(part, reading, described));
                    }
                }
            }
        }
        all.keySet().removeIf(part -> part.kind() == swashlight.findings.wear.WearKind.SPRING);
        return all.values().stream().map(Measured::mean).toList();
    }

    private static Measured measured(WearPart part, Reading reading, double[] described) {
        double value = reading.value();
        double error = reading.standardError();
        double wear = switch (part.kind()) {
            case PISTON_PLAY, WORST_PISTON -> 2 * value;
            case FLATNESS -> Math.max(0, value - described[part.moved().index()]);
            case SEAT_LEAK -> WearPart.seatFlow(value);
            case FACE_SCORE, SCORE_A, SCORE_B, BRIDGE_SCORE, SPRING -> value;
        };
        double scatter = switch (part.kind()) {
            case PISTON_PLAY, WORST_PISTON -> 2 * error;
            case SEAT_LEAK -> WearPart.seatFlow(error);
            default -> error;
        };
        Gauge gauge = new Gauge("case " + reading.label(), scatter, 0, 0, 0);
        return new Measured(part, wear, gauge, 1, OptionalDouble.empty(), 1, 0);
    }
}
