package swashlight.desk.line;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;
import swashlight.desk.work.Stated;

/** What a quantity depends on. */
@Command
final class SwayCommand extends DeskCommand {
    @Option(names = "--show", paramLabel = "QUANTITY")
    private String show = "speed";

    @Mixin
    private DriveOptions drive;

    @Mixin
    private ConditionOptions conditions;

    @Mixin
    private TableOptions table;

    @Mixin
    private PictureOptions picture;

    SwayCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        return Desk.sway(drive.asked(session()), conditions.asked(session()), new Stated("--show", show));
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
