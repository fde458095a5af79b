package swashlight.desk.line;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;
import swashlight.desk.work.Stated;

/** One quantity over one condition. */
@Command
final class CurveCommand extends StateCommand {
    @Option(names = "--show", paramLabel = "QUANTITY")
    private String show = "speed";

    @Mixin
    private SweepOptions sweep;

    @Option(names = "--beside", paramLabel = "CONDITION=VALUE|sound")
    private List<String> beside = new ArrayList<>();

    CurveCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        return Desk.curve(
                drive(),
                conditions(),
                new Stated("--show", show),
                sweep.asked(),
                beside.stream().map(text -> new Stated("--beside", text)).toList());
    }
}
