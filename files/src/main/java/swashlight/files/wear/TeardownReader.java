package swashlight.files.wear;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import swashlight.drive.description.DriveDescription;
import swashlight.files.demo.DemoShelf;
import swashlight.files.document.Fields;
import swashlight.files.document.Heading;
import swashlight.files.document.InputFault;
import swashlight.files.document.Node;
import swashlight.files.drive.DriveFiles;
import swashlight.findings.wear.DrivePapers;
import swashlight.findings.wear.Measured;
import swashlight.findings.wear.Requirement;

/** Reads a teardown from the keys of its root. */
final class TeardownReader {
    private final Fields root;
    private final Optional<Path> folder;

    TeardownReader(Fields root, Optional<Path> folder) {
        this.root = root;
        this.folder = folder;
    }

    /** The teardown; empty when something is wrong, which then stands among the complaints. */
    Optional<TeardownFile> read() {
        Heading heading = Heading.read(root, "teardown", "unnamed teardown");
        Optional<DriveDescription> drive = drive();
        List<Requirement> required = new RequirementReader(root).list("required");
        DrivePapers papers = papers();
        List<Measured> measured = new MeasuredReader(root, papers).list();
        root.close();
        return root.complaints().none()
                ? drive.map(found -> new TeardownFile(
                        heading.name(), heading.invented(), heading.about(), found, required, measured, papers))
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
        return root.text("drive", 500).flatMap(name -> named("drive", name, this::opened));
    }

    private DriveDescription opened(String name) {
        return name.startsWith(DemoShelf.PREFIX)
                ? DriveFiles.demo(name.substring(DemoShelf.PREFIX.length()))
                : DriveFiles.read(beside(name).orElseThrow());
    }

    private DrivePapers papers() {
        Optional<Node> node = root.node("papers");
        if (node.isPresent() && node.get() instanceof Node.Branch) {
            return root.branch("papers")
                    .map(fields -> new PapersReader(fields).below())
                    .orElseGet(DrivePapers::none);
        }
        return root.text("papers", 500)
                .flatMap(name -> named(
                        "papers",
                        name,
                        text -> TeardownFiles.papers(beside(text).orElseThrow())))
                .orElseGet(DrivePapers::none);
    }

    /** What somebody names beside this file; its own faults are told as its own. */
    private <T> Optional<T> named(String key, String name, java.util.function.Function<String, T> opening) {
        boolean demo = name.startsWith(DemoShelf.PREFIX) && key.equals("drive");
        if (!demo && beside(name).isEmpty()) {
            root.complain(
                    "no-file-here",
                    key,
                    name,
                    folder.isEmpty()
                            ? "this teardown did not come from a folder, so it can name no file"
                            : "this is no file beside the teardown",
                    "write it below the key, or give a path from the teardown's folder");
            return Optional.empty();
        }
        try {
            return Optional.of(opening.apply(name));
        } catch (InputFault fault) {
            if (fault.complaints().get(0).key().equals("not-found")) {
                String right = fault.complaints().get(0).right();
                root.complain("not-found", key, name, "there is no such " + key, right);
            } else {
                root.complaints().addAll(fault.complaints());
            }
            return Optional.empty();
        }
    }

    private Optional<Path> beside(String name) {
        try {
            return Optional.of(Path.of(name))
                    .filter(found -> !found.isAbsolute())
                    .flatMap(found -> folder.map(place -> place.resolve(found)));
        } catch (InvalidPathException broken) {
            return Optional.empty();
        }
    }
}
