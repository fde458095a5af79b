package swashlight.files.wear;

import java.util.List;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.wear.DrivePapers;
import swashlight.findings.wear.Measured;
import swashlight.findings.wear.Requirement;

/**
 * One opened drive.
 *
 * @param name its author's name for it
 * @param invented true for demos
 * @param about a sentence on it; empty when there is none
 * @param drive as it should be
 * @param required what its machine must do; empty for the usual
 * @param measured one of each part, repeats averaged
 * @param papers what the maker says of its parts
 */
public record TeardownFile(
        String name,
        boolean invented,
        String about,
        DriveDescription drive,
        List<Requirement> required,
        List<Measured> measured,
        DrivePapers papers) {
    public TeardownFile {
        required = List.copyOf(required);
        measured = List.copyOf(measured);
    }
}
