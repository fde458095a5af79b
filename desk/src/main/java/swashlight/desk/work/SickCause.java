package swashlight.desk.work;

import java.util.List;
import swashlight.findings.cause.Action;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Part;
import swashlight.findings.cause.SeverityPrior;

/** The faults somebody gave a drive, as a cause of known severities. */
final class SickCause {
    private SickCause() {}

    static Cause of(SickDrive drive) {
        List<Part> parts = drive.ails().stream()
                .map(ail -> new Part(ail.fault(), prior(ail), Action.LEAVE_ALONE))
                .toList();
        return new Cause(parts, 1);
    }

    /** Severities in the order of the faults, each in its SI unit. */
    static double[] severities(SickDrive drive) {
        return drive.ails().stream().mapToDouble(SickDrive.Ailment::severity).toArray();
    }

    /** Not asked, for the severity is known. */
    private static SeverityPrior prior(SickDrive.Ailment ail) {
        return ail.fault().whole()
                ? new SeverityPrior.Whole(ail.fault().least())
                : new SeverityPrior.Spread(
                        ail.fault().least(), ail.fault().usual(), ail.fault().most());
    }
}
