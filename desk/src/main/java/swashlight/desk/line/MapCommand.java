package swashlight.desk.line;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;
import swashlight.desk.work.Stated;
import swashlight.desk.work.SweepAsked;

/** One quantity over two conditions. */
@Command
final class MapCommand extends StateCommand {
    @Option(names = "--show", paramLabel = "QUANTITY")
    private String show = "efficiency";

    @Option(names = "--across", paramLabel = "CONDITION")
    private String across = "load";

    @Option(names = "--upward", paramLabel = "CONDITION")
    private String upward = "stroke";

    @Option(names = "--steps", paramLabel = "COUNT")
    private int steps = 13;

    @Option(names = "--from", paramLabel = "VALUE")
    private String from;

    @Option(names = "--to", paramLabel = "VALUE")
    private String to;

    @Option(names = "--upward-from", paramLabel = "VALUE")
    private String upwardFrom;

    @Option(names = "--upward-to", paramLabel = "VALUE")
    private String upwardTo;

    MapCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        return Desk.map(
                drive(),
                conditions(),
                new Stated("--show", show),
                sweep("--across", across, from, to),
                sweep("--upward", upward, upwardFrom, upwardTo));
    }

    private SweepAsked sweep(String option, String condition, String first, String last) {
        return new SweepAsked(
                new Stated(option, condition),
                Optional.ofNullable(first).map(text -> new Stated(option + " from", text)),
                Optional.ofNullable(last).map(text -> new Stated(option + " to", text)),
                steps);
    }
}
