package swashlight.desk.line;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;
import swashlight.desk.work.Stated;

/** What a quantity depends on. */
@Command
final class SwayCommand extends StateCommand {
    @Option(names = "--show", paramLabel = "QUANTITY")
    private String show = "speed";

    SwayCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        return Desk.sway(drive(), conditions(), new Stated("--show", show));
    }
}
