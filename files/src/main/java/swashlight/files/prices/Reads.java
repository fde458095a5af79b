package swashlight.files.prices;

import java.util.List;
import java.util.Map;
import swashlight.drive.description.TypicalDrive;
import swashlight.findings.finding.Candidate;

/** Names of the usual readings. */
final class Reads {
    static final List<String> KEYS = Candidate.of(TypicalDrive.complete("any", true, Map.of())).stream()
            .map(Candidate::key)
            .toList();

    private Reads() {}
}
