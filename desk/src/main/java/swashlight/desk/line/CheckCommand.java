package swashlight.desk.line;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import swashlight.desk.work.Desk;
import swashlight.desk.work.DriveAsked;
import swashlight.desk.work.Outcome;

/** Checks and completes a drive description. */
@Command
final class CheckCommand extends DeskCommand {
    @Parameters(index = "0", arity = "0..1", paramLabel = "FILE|DEMO", descriptionKey = "check.file")
    private String file;

    @Option(names = "--write", paramLabel = "FILE")
    private String write;

    @Mixin
    private TableOptions table;

    CheckCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        DriveAsked asked = new DriveAsked(Named.drive(session(), "FILE", Optional.ofNullable(file)), List.of());
        return Desk.check(asked, Optional.ofNullable(write).map(session()::file), units());
    }

    @Override
    Optional<TableOptions> table() {
        return Optional.of(table);
    }
}
