package swashlight.desk.line;

import java.util.Optional;
import picocli.CommandLine.Mixin;
import swashlight.desk.work.CircumstancesAsked;
import swashlight.desk.work.DriveAsked;

/** A question about a drive under stated conditions; its answer is a table and a picture. */
abstract class StateCommand extends DeskCommand {
    @Mixin
    private DriveOptions drive;

    @Mixin
    private ConditionOptions conditions;

    @Mixin
    private TableOptions table;

    @Mixin
    private PictureOptions picture;

    StateCommand(Session session) {
        super(session);
    }

    DriveAsked drive() {
        return drive.asked(session());
    }

    CircumstancesAsked conditions() {
        return conditions.asked(session());
    }

    @Override
    final Optional<TableOptions> table() {
        return Optional.of(table);
    }

    @Override
    final Optional<PictureOptions> picture() {
        return Optional.of(picture);
    }
}
