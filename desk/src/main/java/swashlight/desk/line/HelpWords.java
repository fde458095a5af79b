package swashlight.desk.line;

import java.util.Collections;
import java.util.Enumeration;
import java.util.Locale;
import java.util.ResourceBundle;

/** The help texts of one command: {@code point.load} if there is one, else the {@code load} that all commands share. */
final class HelpWords extends ResourceBundle {
    private final ResourceBundle all;
    private final String command;

    HelpWords(String command) {
        this.all = load();
        this.command = command;
    }

    static ResourceBundle load() {
        return ResourceBundle.getBundle("swashlight.desk.line.help", Locale.getDefault());
    }

    @Override
    protected Object handleGetObject(String key) {
        String own = command + "." + key;
        if (all.containsKey(own)) {
            return all.getString(own);
        }
        return all.containsKey(key) ? all.getString(key) : null;
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(Collections.list(all.getKeys()).stream()
                .map(key -> key.startsWith(command + ".") ? key.substring(command.length() + 1) : key)
                .distinct()
                .toList());
    }
}
