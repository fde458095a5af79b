package swashlight.desk.line;

import java.util.Optional;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import swashlight.desk.work.DecisionAsked;
import swashlight.desk.work.Stated;

/** A case, and what a decision on it stands on. */
final class DecisionOptions {
    @Parameters(index = "0", arity = "0..1", paramLabel = "CASE", descriptionKey = "case")
    private String file;

    @Option(names = "--prices", paramLabel = "FILE", descriptionKey = "decision.prices")
    private String prices;

    @Option(names = "--hill", paramLabel = "ANGLE|%", descriptionKey = "decision.hill")
    private String hill;

    @Option(names = "--load", paramLabel = "FORCE", descriptionKey = "decision.load")
    private String load;

    @Option(names = "--need", paramLabel = "SHARE", descriptionKey = "decision.need")
    private String need;

    @Option(names = "--have", paramLabel = "LIST", descriptionKey = "decision.have")
    private String have;

    @Option(names = "--seed", paramLabel = "NUMBER", descriptionKey = "seed")
    private long seed = 1;

    @Option(names = "--counted", paramLabel = "FILE", descriptionKey = "find.counted")
    private String counted;

    DecisionAsked asked(Session session) {
        return new DecisionAsked(
                Named.machineCase(session, Optional.ofNullable(file)),
                seed,
                file(session, "--counted", counted),
                Named.prices(session, Optional.ofNullable(prices)),
                stated("--hill", hill),
                stated("--load", load),
                stated("--need", need),
                stated("--have", have));
    }

    long seed() {
        return seed;
    }

    private static Optional<Stated> file(Session session, String option, String name) {
        return Optional.ofNullable(name)
                .map(text -> new Stated(option, session.file(text).toString()));
    }

    private static Optional<Stated> stated(String option, String text) {
        return Optional.ofNullable(text).map(given -> new Stated(option, given));
    }
}
