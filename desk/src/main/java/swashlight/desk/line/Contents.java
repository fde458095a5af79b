package swashlight.desk.line;

import java.util.Optional;
import java.util.ResourceBundle;
import swashlight.files.unit.Nearest;

/** The first page of help: what the program is for and its commands. */
final class Contents {
    private Contents() {}

    static void print(Session session) {
        ResourceBundle words = HelpWords.load();
        StringBuilder page = new StringBuilder(words.getString("contents.job")).append("\n\n");
        for (Catalogue command : Catalogue.values()) {
            page.append(String.format("  %-10s%s%n", command.word(), words.getString(command.word() + ".header")));
        }
        page.append('\n').append(words.getString("contents.more")).append('\n');
        session.out().print(page);
        session.out().flush();
    }

    static String version() {
        String version = Contents.class.getPackage().getImplementationVersion();
        return "Swashlight " + (version == null ? "(from source)" : version);
    }

    static Optional<String> nearest(String word) {
        return Nearest.to(word, Catalogue.words());
    }
}
