package swashlight.desk.line;

import java.io.PrintWriter;
import java.nio.file.Path;
import swashlight.desk.text.Ink;

/**
 * What a command talks to.
 *
 * @param out where answers go
 * @param err where complaints and progress go
 * @param ink how an answer on {@code out} is set off
 * @param folder where file names start from
 * @param width characters a line on {@code out}
 */
record Session(PrintWriter out, PrintWriter err, Ink ink, Path folder, int width) {
    /** With lines as wide as in a file. */
    Session(PrintWriter out, PrintWriter err, Ink ink, Path folder) {
        this(out, err, ink, folder, LineWidth.IN_FILES);
    }

    /** A file as somebody named it. */
    Path file(String name) {
        return folder.resolve(name);
    }
}
