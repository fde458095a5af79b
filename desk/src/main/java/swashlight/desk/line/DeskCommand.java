package swashlight.desk.line;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import swashlight.desk.work.Outcome;
import swashlight.files.unit.UnitSystem;

/** What every command is: a question to the desk, and the wish how to have the answer. */
abstract class DeskCommand implements Callable<Integer> {
    private final Session session;

    @Spec
    private CommandSpec spec;

    @Mixin
    private OutputOptions output;

    @Option(names = "--trace")
    private boolean trace;

    @SuppressWarnings("UnusedVariable") // picocli looks at it
    @Option(
            names = {"-h", "--help"},
            usageHelp = true)
    private boolean help;

    DeskCommand(Session session) {
        this.session = session;
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

    Session session() {
        return session;
    }

    boolean trace() {
        return trace;
    }

    @Override
    public final Integer call() {
        if (output.json && table().map(options -> options.csv).orElse(false)) {
            String wrong = "--json and --csv are two forms of the same answer: one at a time";
            throw new ParameterException(spec.commandLine(), wrong);
        }
        Outcome outcome = patience()
                .map(words -> Progress.during(session, words, this::outcome))
                .orElseGet(this::outcome);
        return new Teller(session, Wish.of(session, output, table(), picture()))
                .tell(outcome)
                .code();
    }
}
