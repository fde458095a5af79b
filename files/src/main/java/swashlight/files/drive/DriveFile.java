package swashlight.files.drive;

import java.util.Map;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Parameter;

/**
 * What a drive file says beyond the numbers.
 *
 * @param drive the whole description, completed
 * @param about a sentence on the drive; empty when there is none
 * @param notes remarks beside single numbers
 */
public record DriveFile(DriveDescription drive, String about, Map<Parameter, String> notes) {
    public DriveFile {
        notes = Map.copyOf(notes);
    }

    /** A description without remarks. */
    public static DriveFile of(DriveDescription drive) {
        return new DriveFile(drive, "", Map.of());
    }

    /** How much is known of the drive. */
    public DriveLevel level() {
        return DriveLevel.of(drive);
    }
}
