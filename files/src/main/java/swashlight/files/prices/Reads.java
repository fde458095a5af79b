package swashlight.files.prices;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import swashlight.drive.description.TypicalDrive;
import swashlight.findings.finding.Candidate;
import swashlight.findings.next.Steps;

/** Names of the usual readings, of looking and of opening the drive: of all whose time may be stated. */
final class Reads {
    static final List<String> KEYS = Stream.concat(
                    Candidate.of(TypicalDrive.complete("any", true, Map.of())).stream()
                            .map(Candidate::key),
                    Steps.keys().stream())
            .toList();

    private Reads() {}
}
