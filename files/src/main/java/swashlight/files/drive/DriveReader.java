package swashlight.files.drive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import swashlight.drive.description.DescriptionFault;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;
import swashlight.files.document.Fields;
import swashlight.files.document.Heading;

/** Reads a drive from the keys of its level: of a file of its own, or below {@code drive} in a case. */
public final class DriveReader {
    private static final int LONGEST_NOTE = 2000;
    private static final Map<String, List<Parameter>> SECTIONS = sections();

    private final Fields root;
    private final Map<Parameter, Quantity> known = new HashMap<>();
    private final Map<Parameter, String> notes = new LinkedHashMap<>();

    private DriveReader(Fields root) {
        this.root = root;
    }

    /**
     * The drive these keys describe; empty when something is wrong, which then stands among the complaints.
     *
     * @param usualName its name when none is given
     */
    public static Optional<DriveFile> read(Fields root, String usualName) {
        return new DriveReader(root).read(usualName);
    }

    /** The sections of a description with their parameters, in order. */
    public static Map<String, List<Parameter>> sections() {
        return Parameters.all().stream()
                .collect(Collectors.groupingBy(Parameter::section, LinkedHashMap::new, Collectors.toList()));
    }

    private Optional<DriveFile> read(String usualName) {
        int before = root.complaints().count();
        Heading heading = Heading.read(root, "drive", usualName);
        Optional<DriveLevel> level = root.choice("level", DriveLevel.words());
        SECTIONS.forEach((section, parameters) -> root.branch(section).ifPresent(keys -> section(keys, parameters)));
        root.close(key -> whereItBelongs(key, SECTIONS.keySet()));
        boolean sound = root.complaints().count() == before;
        if (sound && known.isEmpty()) {
            root.complaints()
                    .add(
                            "says-nothing",
                            root.spot(),
                            root.field(""),
                            "",
                            "no number of the drive is given",
                            "give at least pump.displacement");
            return Optional.empty();
        }
        if (!sound) {
            return Optional.empty();
        }
        Optional<DriveDescription> drive = complete(heading);
        drive.ifPresent(found -> level.ifPresent(stated -> demand(stated, found)));
        return root.complaints().count() > before
                ? Optional.empty()
                : drive.map(found -> new DriveFile(found, heading.about(), notes));
    }

    private void section(Fields keys, List<Parameter> parameters) {
        if (parameters.get(0).section().equals("oil")) {
            keys.choice("grade", OilGrade.byName())
                    .ifPresent(grade -> grade.quantities().forEach(known::putIfAbsent));
        }
        for (Parameter parameter : parameters) {
            if (keys.has(parameter.term())) {
                QuantityReader reader = new QuantityReader(keys, parameter, LONGEST_NOTE);
                reader.quantity().ifPresent(quantity -> known.put(parameter, quantity));
                reader.note().ifPresent(note -> notes.put(parameter, note));
            } else {
                keys.node(parameter.term());
            }
        }
        keys.close(key -> whereItBelongs(key, namesOf(parameters)));
    }

    private Optional<DriveDescription> complete(Heading heading) {
        try {
            return Optional.of(TypicalDrive.complete(heading.name(), heading.invented(), known));
        } catch (DescriptionFault fault) {
            fault.complaints().forEach(complaint -> DriveWords.add(root, complaint));
        }
        return Optional.empty();
    }

    private void demand(DriveLevel stated, DriveDescription drive) {
        List<String> missing = stated.missing(drive);
        if (!missing.isEmpty()) {
            root.complain(
                    "level-lacks",
                    "level",
                    stated.word(),
                    "the drive is described less fully than that",
                    "give " + String.join(", ", missing) + "; or leave the level out");
        }
    }

    /** A key of another section is answered with its whole name. */
    private static Optional<String> whereItBelongs(String key, Set<String> here) {
        if (here.contains(key)) {
            return Optional.empty();
        }
        List<String> full = Parameters.all().stream()
                .filter(parameter -> parameter.term().equalsIgnoreCase(key))
                .map(Parameter::key)
                .limit(4)
                .toList();
        return full.isEmpty() ? Optional.empty() : Optional.of("did you mean " + String.join(" or ", full) + "?");
    }

    private static Set<String> namesOf(List<Parameter> parameters) {
        return new LinkedHashSet<>(
                new ArrayList<>(parameters).stream().map(Parameter::term).toList());
    }
}
