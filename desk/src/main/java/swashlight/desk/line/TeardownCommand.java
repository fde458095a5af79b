package swashlight.desk.line;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;

/** Measured parts in, leak, lost performance and verdict out. */
@Command
final class TeardownCommand extends DeskCommand {
    @Parameters(index = "0", arity = "0..1", paramLabel = "FILE|DEMO", descriptionKey = "file")
    private String file;

    @Option(names = "--seed", paramLabel = "NUMBER")
    private long seed = 1;

    @Mixin
    private RequirementOptions required;

    @Mixin
    private TableOptions table;

    @Mixin
    private PictureOptions picture;

    TeardownCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        return Desk.teardown(Named.teardown(session(), Optional.ofNullable(file)), required.asked(), seed);
    }

    @Override
    Optional<TableOptions> table() {
        return Optional.of(table);
    }

    @Override
    Optional<PictureOptions> picture() {
        return Optional.of(picture);
    }
}
