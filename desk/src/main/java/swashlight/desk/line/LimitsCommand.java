package swashlight.desk.line;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import swashlight.desk.work.Desk;
import swashlight.desk.work.DriveAsked;
import swashlight.desk.work.Outcome;
import swashlight.desk.work.Stated;

/** How much each part of a drive may wear. */
@Command
final class LimitsCommand extends DeskCommand {
    @Parameters(index = "0", arity = "0..1", paramLabel = "FILE|DEMO", descriptionKey = "file")
    private String file;

    @Option(names = "--papers", paramLabel = "FILE")
    private String papers;

    @Option(names = "--seed", paramLabel = "NUMBER")
    private long seed = 1;

    @Mixin
    private RequirementOptions required;

    @Mixin
    private TableOptions table;

    LimitsCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        DriveAsked asked = new DriveAsked(Named.drive(session(), "FILE", Optional.ofNullable(file)), List.of());
        Optional<Stated> said = Optional.ofNullable(papers)
                .map(name -> new Stated("--papers", session().file(name).toString()));
        return Desk.limits(asked, required.asked(), said, seed);
    }

    @Override
    Optional<TableOptions> table() {
        return Optional.of(table);
    }
}
