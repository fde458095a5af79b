package swashlight.files.machine;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import swashlight.drive.description.DriveDescription;
import swashlight.files.demo.DemoShelf;
import swashlight.files.document.Fields;
import swashlight.files.document.Heading;
import swashlight.files.document.InputFault;
import swashlight.files.document.Node;
import swashlight.files.drive.DriveFiles;
import swashlight.findings.reading.Look;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;

/** Reads a case from the keys of its root. */
final class CaseReader {
    private static final int LONGEST_COMPLAINT = 5000; // characters

    private final Fields root;
    private final Optional<Path> folder;

    CaseReader(Fields root, Optional<Path> folder) {
        this.root = root;
        this.folder = folder;
    }

    /** The case; empty when something is wrong, which then stands among the complaints. */
    Optional<CaseFile> read() {
        Heading heading = Heading.read(root, "case", "unnamed case");
        String complaint = root.text("complaint", LONGEST_COMPLAINT).orElse("");
        Optional<DriveDescription> drive = drive();
        Optional<Node.Branch> usual = usual();
        List<Reading> readings = readings(usual);
        Set<Look> seen = looks("seen");
        Set<Look> notSeen = looks("notSeen");
        seen.stream()
                .filter(notSeen::contains)
                .forEach(look -> root.complain(
                        "contradiction",
                        "notSeen",
                        look.key(),
                        "this was seen and not seen",
                        "leave it in one of the lists"));
        root.close();
        return root.complaints().none()
                ? drive.map(found -> new CaseFile(
                        new MachineCase(heading.name(), heading.invented(), complaint, found, readings, seen, notSeen),
                        heading.about()))
                : Optional.empty();
    }

    private Optional<DriveDescription> drive() {
        Optional<Node> node = root.node("drive");
        if (node.isEmpty()) {
            root.complain(
                    "missing",
                    "drive",
                    "",
                    "the drive is missing",
                    "name a file (drive: rider.yaml), a demo (drive: demo:"
                            + DemoShelf.drives().get(0) + "), or describe it below the key");
            return Optional.empty();
        }
        if (node.get() instanceof Node.Branch) {
            return root.branch("drive").flatMap(fields -> DriveFiles.inline(fields, "unnamed drive"));
        }
        return root.text("drive", 500).flatMap(this::named);
    }

    private Optional<DriveDescription> named(String name) {
        try {
            if (name.startsWith(DemoShelf.PREFIX)) {
                return Optional.of(DriveFiles.demo(name.substring(DemoShelf.PREFIX.length())));
            }
            return beside(name).map(DriveFiles::read);
        } catch (InputFault fault) {
            if (fault.complaints().get(0).key().equals("not-found")) {
                String right = fault.complaints().get(0).right();
                root.complain("not-found", "drive", name, "there is no such drive", right);
            } else {
                root.complaints().addAll(fault.complaints());
            }
            return Optional.empty();
        }
    }

    /** A file beside this one; a text that came from elsewhere has nothing beside it. */
    private Optional<Path> beside(String name) {
        Optional<Path> path = Optional.empty();
        try {
            path = Optional.of(Path.of(name)).filter(found -> !found.isAbsolute());
        } catch (InvalidPathException broken) {
            path = Optional.empty();
        }
        if (folder.isEmpty() || path.isEmpty()) {
            root.complain(
                    "no-file-here",
                    "drive",
                    name,
                    folder.isEmpty()
                            ? "this case did not come from a folder, so it can name no file"
                            : "this is no file beside the case",
                    "describe the drive below the key, name a demo, or give a path from the case's folder");
            return Optional.empty();
        }
        return path.map(folder.get()::resolve);
    }

    /** The usual conditions, looked at once by themselves so that a fault in them is told once and where it stands. */
    private Optional<Node.Branch> usual() {
        int before = root.complaints().count();
        Optional<Fields> usual = root.branch("usual");
        usual.ifPresent(fields -> {
            new SetupReader(fields, Optional.empty()).setup(Optional.empty());
            fields.close();
        });
        return usual.isPresent() && root.complaints().count() == before
                ? root.node("usual").map(Node.Branch.class::cast)
                : Optional.empty();
    }

    private List<Reading> readings(Optional<Node.Branch> usual) {
        ReadingReader reader = new ReadingReader(root.complaints(), usual);
        List<Reading> readings = new ArrayList<>();
        int place = 0;
        for (Node item : root.items("readings")) {
            place++;
            reader.read(item, place).ifPresent(readings::add);
        }
        return readings;
    }

    private Set<Look> looks(String key) {
        Set<Look> looks = new LinkedHashSet<>();
        int place = 0;
        for (Node item : root.items(key)) {
            place++;
            Map<String, Node.Entry> alone = Map.of("look", new Node.Entry(item, item.spot()));
            new Fields(new Node.Branch(alone, item.spot()), root.field(key) + "[" + place + "]", root.complaints())
                    .choice("look", lookWords())
                    .ifPresent(looks::add);
        }
        return looks;
    }

    static Map<String, Look> lookWords() {
        Map<String, Look> words = new LinkedHashMap<>();
        for (Look look : Look.values()) {
            words.put(look.key(), look);
        }
        return words;
    }
}
