package swashlight.desk.line;

import java.util.Optional;
import picocli.CommandLine.Option;
import swashlight.desk.work.Stated;
import swashlight.desk.work.SweepAsked;

/** The condition a curve goes across. */
final class SweepOptions {
    @Option(names = "--across", paramLabel = "CONDITION")
    String across = "slope";

    @Option(names = "--from", paramLabel = "VALUE")
    String from;

    @Option(names = "--to", paramLabel = "VALUE")
    String to;

    @Option(names = "--steps", paramLabel = "COUNT")
    int steps = 21;

    SweepAsked asked() {
        return new SweepAsked(
                new Stated("--across", across),
                Optional.ofNullable(from).map(text -> new Stated("--from", text)),
                Optional.ofNullable(to).map(text -> new Stated("--to", text)),
                steps);
    }
}
