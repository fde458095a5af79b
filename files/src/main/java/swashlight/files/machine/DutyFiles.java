package swashlight.files.machine;

import java.nio.file.Path;
import java.util.Optional;
import swashlight.drive.steady.Duty;
import swashlight.files.document.Complaints;
import swashlight.files.document.DocumentReader;
import swashlight.files.document.Fields;
import swashlight.files.document.InputFault;
import swashlight.files.document.Source;

/** Duties in files: what a drive is asked in one settled situation. */
public final class DutyFiles {
    private DutyFiles() {}

    /** The duty in a file; throws {@link InputFault} with every fault of it. */
    public static Duty read(Path path) {
        return open(Source.read(path));
    }

    /** The duty in a text; throws {@link InputFault} with every fault of it. */
    public static Duty open(Source source) {
        Complaints complaints = new Complaints(source.file());
        Optional<Duty> duty =
                new DutyReader(new Fields(DocumentReader.read(source, complaints), "", complaints)).read();
        complaints.check();
        return duty.orElseThrow();
    }
}
