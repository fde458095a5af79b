package swashlight.desk.line;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;
import swashlight.desk.work.Stated;

/** What is wrong with a machine: a case in, ranked causes out. */
@Command
final class FindCommand extends DeskCommand {
    @Parameters(index = "0", arity = "0..1", paramLabel = "CASE", descriptionKey = "case")
    private String file;

    @Option(names = "--seed", paramLabel = "NUMBER")
    private long seed = 1;

    @Option(names = "--counted", paramLabel = "FILE")
    private String counted;

    @Mixin
    private TableOptions table;

    @Mixin
    private PictureOptions picture;

    FindCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        Optional<Stated> named = Named.machineCase(session(), Optional.ofNullable(file));
        return Desk.find(named, seed, counted());
    }

    @Override
    Optional<String> patience() {
        return Optional.of(HelpWords.load().getString("find.patience").replace("{0}", String.valueOf(seed)));
    }

    private Optional<Stated> counted() {
        return Optional.ofNullable(counted)
                .map(file -> new Stated("--counted", session().file(file).toString()));
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
