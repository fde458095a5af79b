package swashlight.desk.line;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;

/** What to do about a machine, by money. */
@Command
final class ChooseCommand extends DeskCommand {
    @Mixin
    private DecisionOptions decision;

    @Mixin
    private TableOptions table;

    ChooseCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        return Desk.choose(decision.asked(session()));
    }

    @Override
    Optional<TableOptions> table() {
        return Optional.of(table);
    }
}
