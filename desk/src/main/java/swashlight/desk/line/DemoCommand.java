package swashlight.desk.line;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;
import swashlight.desk.work.Stated;

/** The invented drives and cases that come along. */
@Command
final class DemoCommand extends DeskCommand {
    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", descriptionKey = "name")
    private String name;

    @Option(names = "--to", paramLabel = "FOLDER")
    private String folder;

    @Mixin
    private TableOptions table;

    DemoCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        if (folder != null) {
            return Desk.demosInto(new Stated("--to", session().file(folder).toString()));
        }
        return name == null ? Desk.demos() : Desk.demo(new Stated("NAME", name));
    }

    @Override
    Optional<TableOptions> table() {
        return Optional.of(table);
    }
}
