package swashlight.desk.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import swashlight.desk.work.DriveAsked;
import swashlight.desk.work.Stated;

/** Which drive, and what is wrong with it. */
final class DriveOptions {
    @Option(names = "--drive", paramLabel = "FILE|DEMO")
    String drive;

    @Option(names = "--fault", paramLabel = "KEY[=SEVERITY]")
    List<String> faults = new ArrayList<>();

    DriveAsked asked(Session session) {
        return new DriveAsked(
                Named.drive(session, "--drive", Optional.ofNullable(drive)),
                faults.stream().map(fault -> new Stated("--fault", fault)).toList());
    }
}
