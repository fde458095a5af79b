package swashlight.files.machine;

import java.nio.file.Path;
import java.util.Optional;
import swashlight.files.demo.DemoShelf;
import swashlight.files.document.Complaints;
import swashlight.files.document.DocumentReader;
import swashlight.files.document.Fields;
import swashlight.files.document.InputFault;
import swashlight.files.document.Node;
import swashlight.files.document.Source;
import swashlight.files.document.Syntax;
import swashlight.files.document.TreeText;
import swashlight.files.unit.UnitSystem;
import swashlight.findings.reading.MachineCase;

/** Machine cases in files. */
public final class CaseFiles {
    private CaseFiles() {}

    /** The case in a file; throws {@link InputFault} with every fault of it and of the drive file it names. */
    public static MachineCase read(Path path) {
        return open(Source.read(path)).machineCase();
    }

    /** The case in a text; throws {@link InputFault} with every fault of the text. */
    public static CaseFile open(Source source) {
        Complaints complaints = new Complaints(source.file());
        Node.Branch root = DocumentReader.read(source, complaints);
        Optional<CaseFile> found = new CaseReader(new Fields(root, "", complaints), source.folder()).read();
        complaints.check();
        return found.orElseThrow();
    }

    /** One of the invented cases that come along: {@link DemoShelf#cases()}. */
    public static MachineCase demo(String name) {
        return open(DemoShelf.machineCase(name)).machineCase();
    }

    /** The case somebody names on a command line: a file, or {@code demo:} and a name. */
    public static MachineCase named(String text) {
        return text.startsWith(DemoShelf.PREFIX)
                ? demo(text.substring(DemoShelf.PREFIX.length()))
                : read(Source.path(text));
    }

    /** The whole case with its drive, that reads back the same to the last bit. */
    public static String write(CaseFile file, Syntax syntax, UnitSystem system) {
        return TreeText.of(CaseTree.of(file, system), syntax);
    }
}
