package swashlight.desk.line;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;
import swashlight.desk.work.Stated;

/** The JSON schema of a kind of file. */
@Command
final class SchemaCommand extends DeskCommand {
    @Parameters(index = "0", paramLabel = "KIND", descriptionKey = "kind")
    private String kind;

    SchemaCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        return Desk.schema(new Stated("KIND", kind));
    }
}
