package swashlight.desk.line;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;
import swashlight.desk.work.ProofAsked;
import swashlight.desk.work.Stated;

/** Which readings prove a repair, and whether they do. */
@Command
final class ProofCommand extends DeskCommand {
    @Parameters(index = "0", arity = "0..1", paramLabel = "CASE", descriptionKey = "case")
    private String before;

    @Parameters(index = "1", arity = "0..1", paramLabel = "AFTER", descriptionKey = "after")
    private String after;

    @Option(names = "--done", paramLabel = "WORK")
    private String done;

    @Option(names = "--seed", paramLabel = "NUMBER")
    private long seed = 1;

    @Mixin
    private TableOptions table;

    @Mixin
    private PictureOptions picture;

    ProofCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        return Desk.proof(new ProofAsked(
                Named.machineCase(session(), Optional.ofNullable(before)),
                Named.machineCase(session(), Optional.ofNullable(after)),
                Optional.ofNullable(done).map(text -> new Stated("--done", text)),
                seed));
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
