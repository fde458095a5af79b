package swashlight.files.unit;

/** Many ways to write a unit, one way to compare them. */
final class UnitSpelling {
    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final String DOTS = "·*⋅×•∙";
    private static final String DASHES = "-−–‑";

    private UnitSpelling() {}

    /** Without spaces, dots and carets, raised digits lowered: N·m, N m, N*m and Nm are one. */
    static String plain(String written) {
        StringBuilder plain = new StringBuilder(written.length());
        for (int i = 0; i < written.length(); i++) {
            char c = written.charAt(i);
            int raised = RAISED.indexOf(c);
            if (raised >= 0) {
                plain.append((char) ('0' + raised));
            } else if (c == 'μ' || c == 'µ') {
                plain.append('µ');
            } else if (c == 'º' || c == '˚') {
                plain.append('°');
            } else if (c == '⁻' || (DASHES.indexOf(c) >= 0 && digitFollows(written, i))) {
                plain.append('-');
            } else if (!skipped(c)) {
                plain.append(c);
            }
        }
        return plain.toString();
    }

    /** As people like to see it: cm³/rev, N·m. */
    static String symbol(String label) {
        StringBuilder symbol = new StringBuilder(label.length());
        for (int i = 0; i < label.length(); i++) {
            char c = label.charAt(i);
            boolean power = Character.isDigit(c) && i > 0 && Character.isLetter(label.charAt(i - 1));
            symbol.append(power ? RAISED.charAt(c - '0') : c == '.' ? '·' : c);
        }
        return symbol.toString();
    }

    private static boolean digitFollows(String text, int at) {
        return at + 1 < text.length() && Character.isDigit(text.charAt(at + 1));
    }

    private static boolean skipped(char c) {
        return Character.isWhitespace(c)
                || Character.isSpaceChar(c)
                || c == '.'
                || c == '^'
                || DOTS.indexOf(c) >= 0
                || DASHES.indexOf(c) >= 0;
    }
}
