package swashlight.desk.line;

import java.io.PrintWriter;
import java.util.List;
import swashlight.desk.work.Refusal;

/** Refusals as a person reads them: where, what stands there, what is wrong, what would be right. */
final class Complaints {
    private static final int MOST_SHOWN = 30;

    private Complaints() {}

    static void tell(PrintWriter err, List<Refusal> refusals) {
        refusals.stream().limit(MOST_SHOWN).forEach(refusal -> err.println(text(refusal)));
        if (refusals.size() > MOST_SHOWN) {
            err.println("… " + (refusals.size() - MOST_SHOWN));
        }
    }

    static String text(Refusal refusal) {
        String given = refusal.given().isEmpty() ? "" : " \"" + refusal.given() + "\"";
        String right = refusal.right().isEmpty() ? "" : " " + sentence(refusal.right());
        return refusal.where() + ":" + (given.isEmpty() ? " " : given + ": ") + refusal.wrong() + "." + right;
    }

    private static String sentence(String words) {
        String text = Character.toUpperCase(words.charAt(0)) + words.substring(1);
        return text.endsWith("?") || text.endsWith(".") ? text : text + ".";
    }
}
