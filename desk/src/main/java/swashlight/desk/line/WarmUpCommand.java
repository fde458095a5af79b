package swashlight.desk.line;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;
import swashlight.desk.work.Stated;

/** Warm-up and fade. */
@Command
final class WarmUpCommand extends StateCommand {
    @Option(names = "--for", paramLabel = "TIME")
    private String duration = "60 min";

    WarmUpCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        return Desk.warmUp(drive(), conditions(), new Stated("--for", duration));
    }
}
