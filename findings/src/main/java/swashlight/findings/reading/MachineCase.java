package swashlight.findings.reading;

import java.util.List;
import java.util.Set;
import swashlight.drive.description.DriveDescription;

/**
 * One machine with a complaint: what it is, what was read, what was seen.
 *
 * @param name its author's name for it
 * @param invented true for demo cases
 * @param complaint the customer's words
 * @param drive the drive as it should be
 * @param readings in the order taken
 * @param seen looks noted as present
 * @param notSeen looks noted as absent
 */
public record MachineCase(
        String name,
        boolean invented,
        String complaint,
        DriveDescription drive,
        List<Reading> readings,
        Set<Look> seen,
        Set<Look> notSeen) {
    public MachineCase {
        readings = List.copyOf(readings);
        seen = Set.copyOf(seen);
        notSeen = Set.copyOf(notSeen);
    }
}
