package swashlight.desk.line;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import swashlight.desk.work.Desk;
import swashlight.desk.work.DriveAsked;
import swashlight.desk.work.Outcome;

/** What readings teach about a drive, before anyone takes them. */
@Command
final class LearnCommand extends DeskCommand {
    @Option(names = "--drive", paramLabel = "FILE|DEMO")
    private String drive;

    @Mixin
    private TableOptions table;

    LearnCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        return Desk.learn(new DriveAsked(Named.drive(session(), "--drive", Optional.ofNullable(drive)), List.of()));
    }

    @Override
    Optional<TableOptions> table() {
        return Optional.of(table);
    }
}
