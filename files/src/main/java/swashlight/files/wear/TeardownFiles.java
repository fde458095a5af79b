package swashlight.files.wear;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import swashlight.files.demo.DemoShelf;
import swashlight.files.document.Complaints;
import swashlight.files.document.DocumentReader;
import swashlight.files.document.Fields;
import swashlight.files.document.InputFault;
import swashlight.files.document.Node;
import swashlight.files.document.Range;
import swashlight.files.document.Source;
import swashlight.files.document.Spot;
import swashlight.files.machine.CaseFile;
import swashlight.files.machine.CaseFiles;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.wear.DrivePapers;
import swashlight.findings.wear.Measured;

/** Teardowns and drives' papers in files. */
public final class TeardownFiles {
    private TeardownFiles() {}

    /** The teardown in a text, or in the dimensions of a case; throws {@link InputFault} with every fault of it. */
    public static TeardownFile open(Source source) {
        Complaints complaints = new Complaints(source.file());
        Node.Branch root = DocumentReader.read(source, complaints);
        if (isCase(root)) {
            return ofCase(source);
        }
        Optional<TeardownFile> found = new TeardownReader(new Fields(root, "", complaints), source.folder()).read();
        complaints.check();
        return found.orElseThrow();
    }

    /** The papers in a file; throws {@link InputFault} with every fault of it. */
    public static DrivePapers papers(Path path) {
        return papers(Source.read(path));
    }

    /** The papers in a text; throws {@link InputFault} with every fault of it. */
    public static DrivePapers papers(Source source) {
        Complaints complaints = new Complaints(source.file());
        Fields root = new Fields(DocumentReader.read(source, complaints), "", complaints);
        DrivePapers papers = new PapersReader(root).file();
        complaints.check();
        return papers;
    }

    /** One of the invented teardowns that come along: {@link DemoShelf#teardowns()}. */
    public static TeardownFile demo(String name) {
        return open(DemoShelf.teardown(name));
    }

    /** What a share that is required may be. */
    public static Range share() {
        return RequirementReader.SHARE;
    }

    /** How wide a score may be. */
    public static Range width() {
        return MeasuredReader.WIDTH;
    }

    /** How tight a screw may be. */
    public static Range torque() {
        return PapersReader.TORQUE;
    }

    private static boolean isCase(Node.Branch root) {
        Node.Entry kind = root.entries().get("kind");
        boolean said = kind != null
                && kind.value() instanceof Node.Leaf leaf
                && leaf.text().equals("case");
        return said || root.entries().containsKey("complaint");
    }

    private static TeardownFile ofCase(Source source) {
        CaseFile file = CaseFiles.open(source);
        MachineCase machine = file.machineCase();
        List<Measured> measured = PartDimensions.of(machine);
        if (measured.isEmpty()) {
            Complaints complaints = new Complaints(source.file());
            complaints.add(
                    "nothing-measured",
                    Spot.START,
                    "readings",
                    "",
                    "no reading of this case is a dimension of a part that wears",
                    "add partDimension readings, or write a file of kind teardown");
            throw complaints.fault();
        }
        return new TeardownFile(
                machine.name(),
                machine.invented(),
                file.about(),
                machine.drive(),
                List.of(),
                measured,
                DrivePapers.none());
    }
}
