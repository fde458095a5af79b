package swashlight.desk.line;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;

/** One operating point with its loss ledger. */
@Command
final class PointCommand extends DeskCommand {
    @Mixin
    private DriveOptions drive;

    @Mixin
    private ConditionOptions conditions;

    @Mixin
    private TableOptions table;

    @Mixin
    private PictureOptions picture;

    PointCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        return Desk.point(drive.asked(session()), conditions.asked(session()));
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
