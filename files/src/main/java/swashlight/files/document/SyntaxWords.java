package swashlight.files.document;

/** What a parser says, said to people. */
final class SyntaxWords {
    private SyntaxWords() {}

    static String of(Syntax syntax, String message) {
        String said = String.valueOf(message);
        if (said.contains("\\t") || said.contains("TAB")) {
            return "a tab stands where " + syntax + " wants spaces";
        }
        if (said.contains("mapping values are not allowed") || said.contains("simple key")) {
            return "a colon stands where none can be, or a line is set in wrongly";
        }
        if (said.contains("block mapping") || said.contains("block collection") || said.contains("indent")) {
            return "a line is set in by another number of spaces than its neighbours";
        }
        if (said.contains("quoted") || said.contains("end-of-input") || said.contains("end of stream")) {
            return "the file ends within a value, a quotation or a bracket";
        }
        return "this is not " + syntax + " here";
    }

    static String advice(Syntax syntax) {
        return syntax == Syntax.YAML
                ? "write key: value, one a line; set deeper levels in by two spaces; put texts with : or # in quotes"
                : "write {\"key\": \"value\"} with commas between, quotes around every text";
    }
}
