package swashlight.desk.work;

import java.nio.file.Path;
import java.util.List;
import swashlight.files.demo.DemoShelf;
import swashlight.files.document.Source;
import swashlight.files.drive.DriveFile;
import swashlight.files.drive.DriveFiles;

/** Finds the drive that is asked about: a demo by name, or a file. */
final class DriveShelf {
    private DriveShelf() {}

    /** The drive with what somebody says is wrong with it. */
    static SickDrive open(DriveAsked asked, Inspection inspection) {
        List<SickDrive.Ailment> ails = AilmentReader.read(asked.faults(), inspection);
        DriveFile file = inspection.filed(() -> file(asked));
        return new SickDrive(file.drive(), ails);
    }

    /** The drive's file, completed. */
    static DriveFile file(DriveAsked asked) {
        return DriveFiles.open(source(asked));
    }

    private static Source source(DriveAsked asked) {
        String name = asked.source().map(Stated::text).orElse(DemoShelf.drives().get(0));
        if (name.startsWith(DemoShelf.PREFIX)) {
            return DemoShelf.drive(name.substring(DemoShelf.PREFIX.length()));
        }
        return DemoShelf.drives().contains(name) ? DemoShelf.drive(name) : Source.read(Path.of(name));
    }
}
