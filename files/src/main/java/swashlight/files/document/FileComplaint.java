package swashlight.files.document;

/**
 * One thing wrong with a file, for people and programs.
 *
 * @param key stable name: unknown-key, no-unit, out-of-range, … (docs/formats.md lists them)
 * @param file name of the file
 * @param line from 1
 * @param column from 1
 * @param field the value at fault, such as pump.boreClearance; empty for the file as a whole
 * @param given what stands there
 * @param wrong what is wrong with it
 * @param right what would be right
 */
public record FileComplaint(
        String key, String file, int line, int column, String field, String given, String wrong, String right) {
    private static final int MOST_SHOWN = 60; // characters of what is given

    public FileComplaint {
        given = shortened(given);
    }

    /** The complaint as one line of text. */
    public String text() {
        String where = file + ", line " + line + ", column " + column + (field.isEmpty() ? "" : ", " + field);
        return where + ": " + (given.isEmpty() ? "" : "\"" + given + "\": ") + wrong + "; " + right + ending();
    }

    private String ending() {
        return right.endsWith("?") || right.endsWith(".") ? "" : ".";
    }

    private static String shortened(String text) {
        String line = text.strip().replaceAll("\\p{Cntrl}+", " ");
        return line.length() <= MOST_SHOWN ? line : line.substring(0, MOST_SHOWN - 1) + "…";
    }
}
