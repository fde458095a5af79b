package swashlight.desk.line;

import picocli.CommandLine.Command;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;

/** One operating point with its loss ledger. */
@Command
final class PointCommand extends StateCommand {
    PointCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        return Desk.point(drive(), conditions());
    }
}
