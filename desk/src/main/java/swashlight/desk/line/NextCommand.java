package swashlight.desk.line;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;

/** Which reading to take next, by money. */
@Command
final class NextCommand extends DeskCommand {
    @Mixin
    private DecisionOptions decision;

    @Mixin
    private TableOptions table;

    NextCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        return Desk.next(decision.asked(session()));
    }

    @Override
    Optional<TableOptions> table() {
        return Optional.of(table);
    }
}
