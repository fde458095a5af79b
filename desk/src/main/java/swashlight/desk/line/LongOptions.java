package swashlight.desk.line;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** For long work that is done in rows. */
final class LongOptions {
    @Option(names = "--seed", paramLabel = "NUMBER")
    long seed = 1;

    @Option(names = "--careful")
    boolean careful;

    @Option(names = "--cores", paramLabel = "NUMBER")
    int cores = Runtime.getRuntime().availableProcessors();

    @Option(names = "--to", paramLabel = "FILE")
    private String to;

    Optional<Path> to(Session session) {
        return Optional.ofNullable(to).map(session::file);
    }

    int hands() {
        return Math.max(1, Math.min(256, cores));
    }
}
