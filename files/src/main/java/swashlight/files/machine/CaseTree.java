package swashlight.files.machine;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import swashlight.drive.description.Dimension;
import swashlight.drive.description.Parameter;
import swashlight.files.document.Heading;
import swashlight.files.drive.DriveFile;
import swashlight.files.drive.DriveTree;
import swashlight.files.unit.UnitSystem;
import swashlight.findings.reading.Look;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.Setup;

/** A case as a tree to write. Every reading states all its conditions; usual ones are not written. */
final class CaseTree {
    private final UnitSystem system;

    private CaseTree(UnitSystem system) {
        this.system = system;
    }

    static Map<String, Object> of(CaseFile file, UnitSystem system) {
        MachineCase machine = file.machineCase();
        CaseTree tree = new CaseTree(system);
        Map<String, Object> root = Heading.tree("case", machine.name(), machine.invented(), file.about());
        if (!machine.complaint().isEmpty()) {
            root.put("complaint", machine.complaint());
        }
        root.put("drive", DriveTree.of(DriveFile.of(machine.drive()), system));
        root.put("readings", machine.readings().stream().map(tree::reading).toList());
        root.put("seen", keys(machine.seen()));
        root.put("notSeen", keys(machine.notSeen()));
        return root;
    }

    private static List<String> keys(Set<Look> looks) {
        return looks.stream().sorted().map(Look::key).toList();
    }

    private Map<String, Object> reading(Reading reading) {
        Map<String, Object> item = new LinkedHashMap<>();
        Setup setup = reading.setup();
        Dimension dimension = setup.part()
                .filter(part -> reading.kind() == swashlight.findings.reading.ReadingKind.PART_DIMENSION)
                .map(Parameter::dimension)
                .orElse(reading.kind().dimension());
        item.put(reading.kind().key(), system.exact(reading.value(), dimension));
        reading.error()
                .ifPresent(error -> item.put("error", system.exactDifference(error, reading.value(), dimension)));
        item.put("label", reading.label());
        setup.part().ifPresent(part -> item.put("part", part.key()));
        put(item, Condition.STROKE, setup.stroke(), OptionalDouble.empty());
        put(item, Condition.THROTTLE, setup.throttle(), OptionalDouble.empty());
        put(item, Condition.INPUT_SPEED, setup.inputSpeed(), OptionalDouble.empty());
        put(item, Condition.OIL_TEMPERATURE, setup.oilTemperature(), setup.temperatureError());
        put(item, Condition.SLOPE, setup.slope(), setup.slopeError());
        put(item, Condition.DISTANCE, setup.distance(), OptionalDouble.empty());
        put(item, Condition.LOAD, setup.load(), OptionalDouble.empty());
        put(item, Condition.SINCE, setup.since(), OptionalDouble.empty());
        put(item, Condition.AMBIENT, setup.ambient(), OptionalDouble.empty());
        flag(item, "lifted", setup.lifted());
        flag(item, "held", setup.held());
        flag(item, "backwards", setup.backwards());
        return item;
    }

    private void put(Map<String, Object> item, Condition condition, OptionalDouble value, OptionalDouble spread) {
        if (value.isEmpty()) {
            return;
        }
        Dimension dimension = condition.range().dimension();
        String text = system.exact(value.getAsDouble(), dimension);
        item.put(
                condition.key(),
                spread.isEmpty()
                        ? text
                        : Map.of(
                                "value",
                                text,
                                "spread",
                                system.exactDifference(spread.getAsDouble(), value.getAsDouble(), dimension)));
    }

    private static void flag(Map<String, Object> item, String key, boolean flag) {
        if (flag) {
            item.put(key, true);
        }
    }
}
