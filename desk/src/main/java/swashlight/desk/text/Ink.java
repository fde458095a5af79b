package swashlight.desk.text;

/** How text is set off: by the terminal's bold, or not at all. */
public enum Ink {
    /** No marks: files, pipes, terminals without colour. */
    PLAIN("", "", ""),
    /** A terminal that understands colour. */
    TERMINAL("\u001b[1m", "\u001b[2m", "\u001b[0m");

    private final String strong;
    private final String faint;
    private final String end;

    Ink(String strong, String faint, String end) {
        this.strong = strong;
        this.faint = faint;
        this.end = end;
    }

    /** Text that carries the answer. */
    public String strong(String text) {
        return text.isEmpty() ? text : strong + text + end;
    }

    /** Text that stands back. */
    public String faint(String text) {
        return text.isEmpty() ? text : faint + text + end;
    }
}
