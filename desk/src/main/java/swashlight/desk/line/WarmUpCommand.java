package swashlight.desk.line;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;
import swashlight.desk.work.Stated;

/** Warm-up and fade. */
@Command
final class WarmUpCommand extends DeskCommand {
    @Option(names = "--for", paramLabel = "TIME")
    private String duration = "60 min";

    @Mixin
    private DriveOptions drive;

    @Mixin
    private ConditionOptions conditions;

    @Mixin
    private TableOptions table;

    @Mixin
    private PictureOptions picture;

    WarmUpCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        return Desk.warmUp(drive.asked(session()), conditions.asked(session()), new Stated("--for", duration));
    }

    @Override
    Optional<TableOptions> table() {
        return Optional.of(table);
    }

    @Override
    Optional<PictureOptions> picture() {
        return Optional.of(picture);
    }
}
