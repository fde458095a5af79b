package swashlight.desk.line;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;
import swashlight.desk.work.Stated;

/** Losses from a bench table. */
@Command
final class FitCommand extends DeskCommand {
    @Parameters(arity = "0..1", paramLabel = "FILE", descriptionKey = "file")
    private String file;

    @Option(names = "--as", paramLabel = "pump|motor|drain|rig")
    private String kind;

    @Option(names = "--healthy", paramLabel = "FILE")
    private String healthy;

    @Mixin
    private DriveOptions drive;

    @Mixin
    private TableOptions table;

    @Mixin
    private PictureOptions picture;

    FitCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        return Desk.fit(named("FILE", file), word("--as", kind), named("--healthy", healthy), drive.asked(session()));
    }

    private Optional<Stated> named(String where, String name) {
        return Optional.ofNullable(name)
                .map(text -> new Stated(where, session().file(text).toString()));
    }

    private static Optional<Stated> word(String where, String text) {
        return Optional.ofNullable(text).map(word -> new Stated(where, word));
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
