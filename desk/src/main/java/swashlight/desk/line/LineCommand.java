package swashlight.desk.line;

import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What every command has, whatever it answers: help, and a look inside when it breaks. */
abstract class LineCommand implements Callable<Integer> {
    private final Session session;

    @Spec
    private CommandSpec spec;

    @Option(names = "--trace")
    private boolean trace;

    @SuppressWarnings("UnusedVariable") // picocli looks at it
    @Option(
            names = {"-h", "--help"},
            usageHelp = true)
    private boolean help;

    LineCommand(Session session) {
        this.session = session;
    }

    Session session() {
        return session;
    }

    boolean trace() {
        return trace;
    }

    /** What is thrown when options do not go together. */
    ParameterException wrong(String why) {
        return new ParameterException(spec.commandLine(), why);
    }
}
