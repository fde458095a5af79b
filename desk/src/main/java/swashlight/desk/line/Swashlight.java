package swashlight.desk.line;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import swashlight.desk.text.Ink;
import swashlight.desk.work.Refusal;

/** Where the program starts: finds the command, runs it, ends with its exit code. */
public final class Swashlight {
    private static final List<String> ASKS_FOR_HELP = List.of("--help", "-h", "help");

    private Swashlight() {}

    /** Runs the command in the arguments and ends the program. */
    public static void main(String[] arguments) {
        Ink ink = CommandLine.Help.Ansi.AUTO.enabled() ? Ink.TERMINAL : Ink.PLAIN;
        PrintWriter out = writer(FileDescriptor.out);
        PrintWriter err = writer(FileDescriptor.err);
        int code = run(arguments, new Session(out, err, ink, Path.of(""), LineWidth.of(ink)));
        out.flush();
        err.flush();
        System.exit(code);
    }

    /** Runs the command in the arguments; the exit code. */
    static int run(String[] arguments, Session session) {
        if (arguments.length == 0 || (arguments.length == 1 && ASKS_FOR_HELP.contains(arguments[0]))) {
            Contents.print(session);
            return Ending.ANSWERED.code();
        }
        if (arguments[0].equals("--version") || arguments[0].equals("-V")) {
            session.out().println(Contents.version());
            return Ending.ANSWERED.code();
        }
        boolean help = arguments[0].equals("help");
        String word = help ? arguments[1] : arguments[0];
        Optional<Catalogue> command = Catalogue.find(word);
        if (command.isEmpty()) {
            Complaints.tell(session.err(), List.of(unknown(word)));
            return Ending.INPUT.code();
        }
        String[] rest = help ? new String[] {"--help"} : Arrays.copyOfRange(arguments, 1, arguments.length);
        return Run.of(command.get(), session).execute(rest);
    }

    private static Refusal unknown(String word) {
        return new Refusal(
                "unknown-command",
                "command line",
                word,
                "no command is called that",
                Contents.nearest(word).map(near -> "did you mean " + near + "?").orElse("--help lists the commands"));
    }

    /** UTF-8 into files and pipes on every system; what the console expects on a Windows console. */
    private static PrintWriter writer(FileDescriptor descriptor) {
        Console console = System.getProperty("os.name").startsWith("Windows") ? System.console() : null;
        return console != null
                ? console.writer()
                : new PrintWriter(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
    }
}
