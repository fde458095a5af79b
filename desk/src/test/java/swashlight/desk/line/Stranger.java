package swashlight.desk.line;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import swashlight.desk.text.Ink;

/** Runs the program in a folder as somebody at a shell would, and keeps what it tells. */
record Stranger(Path folder) {
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    /** Exit code, standard output, standard error. */
    record Told(int code, String out, String err) {
        List<String> rows() {
            return List.of(out.split("\r\n"));
        }
    }

    /** Runs a line such as {@code swashlight point --slope "15 %"}. */
    Told types(String line) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(line.strip());
        while (word.find()) {
            words.add(word.group(1) == null ? word.group(2) : word.group(1));
        }
        if (!words.remove(0).equals("swashlight")) {
            throw new IllegalArgumentException("not a line of this program: " + line);
        }
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Session session = new Session(new PrintWriter(out), new PrintWriter(err), Ink.PLAIN, folder);
        int code = Swashlight.run(words.toArray(String[]::new), session);
        return new Told(code, out.toString(), err.toString());
    }
}
