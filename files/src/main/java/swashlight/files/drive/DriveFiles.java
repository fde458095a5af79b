package swashlight.files.drive;

import java.nio.file.Path;
import java.util.Optional;
import swashlight.drive.description.DriveDescription;
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

/** Drive descriptions in files. */
public final class DriveFiles {
    private DriveFiles() {}

    /** The drive a file describes, completed with what is typical; throws {@link InputFault} with every fault of the file. */
    public static DriveDescription read(Path path) {
        return open(Source.read(path)).drive();
    }

    /** The drive a text describes, with its remarks; throws {@link InputFault} with every fault of the text. */
    public static DriveFile open(Source source) {
        Complaints complaints = new Complaints(source.file());
        Node.Branch root = DocumentReader.read(source, complaints);
        Optional<DriveFile> drive = DriveReader.read(new Fields(root, "", complaints), "unnamed drive");
        complaints.check();
        return drive.orElseThrow();
    }

    /** The drive that stands below a key of another file. */
    public static Optional<DriveDescription> inline(Fields fields, String usualName) {
        return DriveReader.read(fields, usualName).map(DriveFile::drive);
    }

    /** One of the invented drives that come along: {@link DemoShelf#drives()}. */
    public static DriveDescription demo(String name) {
        return open(DemoShelf.drive(name)).drive();
    }

    /** The drive somebody names on a command line or in a case: a file, or {@code demo:} and a name. */
    public static DriveDescription named(String text) {
        return text.startsWith(DemoShelf.PREFIX)
                ? demo(text.substring(DemoShelf.PREFIX.length()))
                : read(Source.path(text));
    }

    /** A complete description that reads back the same to the last bit. */
    public static String write(DriveFile file, Syntax syntax, UnitSystem system) {
        return TreeText.of(DriveTree.of(file, system), syntax);
    }
}
