package swashlight.desk.line;

import java.util.Optional;
import picocli.CommandLine.Mixin;
import swashlight.desk.work.Outcome;
import swashlight.files.unit.UnitSystem;

/** What every command is: a question to the desk, and the wish how to have the answer. */
abstract class DeskCommand extends LineCommand {
    @Mixin
    private OutputOptions output;

    DeskCommand(Session session) {
        super(session);
    }

    /** Asks the desk. */
    abstract Outcome outcome();

    /** The table options, where the answer has a table. */
    Optional<TableOptions> table() {
        return Optional.empty();
    }

    /** The picture options, where the answer has a picture. */
    Optional<PictureOptions> picture() {
        return Optional.empty();
    }

    /** The units wished for. */
    UnitSystem units() {
        return output.units.system();
    }

    /** What somebody who waits longer than a second reads; nothing where the command says itself how far it is. */
    Optional<String> patience() {
        return Optional.of(HelpWords.load().getString("patience"));
    }

    @Override
    public final Integer call() {
        if (output.json && table().map(options -> options.csv).orElse(false)) {
            throw wrong("--json and --csv are two forms of the same answer: one at a time");
        }
        Outcome outcome = patience()
                .map(words -> Progress.during(session(), words, this::outcome))
                .orElseGet(this::outcome);
        return new Teller(session(), Wish.of(session(), output, table(), picture()))
                .tell(outcome)
                .code();
    }
}
