package swashlight.desk.line;

import java.util.List;
import java.util.ResourceBundle;
import picocli.CommandLine;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import swashlight.desk.work.Refusal;

/** One command made ready for picocli: its help texts, and what happens when it is called wrongly or breaks. */
final class Run {
    private Run() {}

    static CommandLine of(Catalogue command, Session session) {
        LineCommand made = command.make(session);
        CommandLine line = new CommandLine(made);
        ResourceBundle words = new HelpWords(command.word());
        line.setCommandName("swashlight " + command.word());
        line.setResourceBundle(words);
        line.setUsageHelpWidth(session.width());
        line.setOut(session.out());
        line.setErr(session.err());
        line.setParameterExceptionHandler((wrong, arguments) -> refuse(wrong, command, session));
        line.setExecutionExceptionHandler((broken, again, parsed) -> confess(broken, made, session));
        UsageMessageSpec usage = line.getCommandSpec().usageMessage();
        usage.header(words.getString("header"));
        usage.description(words.getString("description"));
        usage.sortOptions(false);
        usage.footer(examples(words.getString("examples")));
        return line;
    }

    private static String[] examples(String examples) {
        return ("\nExamples\n" + examples).replace("%", "%%").indent(0).split("\n");
    }

    private static int refuse(ParameterException wrong, Catalogue command, Session session) {
        String near = wrong instanceof UnmatchedArgumentException unmatched
                ? String.join(" ", unmatched.getSuggestions().stream().limit(1).toList())
                : "";
        String right = near.isEmpty()
                ? "see swashlight " + command.word() + " --help: it shows what it takes, with examples"
                : "did you mean " + near + "?";
        Refusal refusal = new Refusal("command-line", "swashlight " + command.word(), "", wrong.getMessage(), right);
        Complaints.tell(session.err(), List.of(refusal));
        return Ending.INPUT.code();
    }

    private static int confess(Exception broken, LineCommand made, Session session) {
        session.err().println("This is a fault of Swashlight, not of your input: " + broken);
        if (made.trace()) {
            broken.printStackTrace(session.err());
        } else {
            session.err().println("Run the same again with --trace, and send what it prints with your report.");
        }
        return Ending.OUR_FAULT.code();
    }
}
