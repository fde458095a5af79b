package swashlight.files.document;

/** Free text in double quotes, in the form that YAML and JSON both read. */
public final class QuotedText {
    private static final char LAST = '\uFFFD'; // the last character that both print as it is

    private QuotedText() {}

    /** The text quoted. */
    public static String of(String text) {
        StringBuilder quoted = new StringBuilder(text.length() + 2).append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '\t' -> quoted.append("\\t");
                case '\r' -> quoted.append("\\r");
                default -> quoted.append(plain(c) ? String.valueOf(c) : escaped(c));
            }
        }
        return quoted.append('"').toString();
    }

    private static boolean plain(char c) {
        boolean control = c < ' ' || (c >= 0x7f && c <= 0xa0);
        boolean separator = c >= 0x2000 && c <= 0x2060;
        return !control && !separator && c != '\uFEFF' && c <= LAST;
    }

    private static String escaped(char c) {
        String digits = Integer.toHexString(c);
        return "\\u" + "0".repeat(4 - digits.length()) + digits;
    }
}
