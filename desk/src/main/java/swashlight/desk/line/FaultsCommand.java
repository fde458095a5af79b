package swashlight.desk.line;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;

/** Everything that can be wrong. */
@Command
final class FaultsCommand extends DeskCommand {
    @Mixin
    private TableOptions table;

    FaultsCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        return Desk.faults();
    }

    @Override
    Optional<TableOptions> table() {
        return Optional.of(table);
    }
}
