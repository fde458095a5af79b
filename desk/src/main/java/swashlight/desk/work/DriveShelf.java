package swashlight.desk.work;

import java.util.Map;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.TypicalDrive;

/** Finds the drive that is asked about. */
final class DriveShelf {
    private DriveShelf() {}

    static SickDrive open(DriveAsked asked, Inspection inspection) {
        return new SickDrive(drive(), AilmentReader.read(asked.faults(), inspection));
    }

    private static DriveDescription drive() {
        return TypicalDrive.complete("light-rider", true, Map.of());
    }
}
