package swashlight.desk.line;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import swashlight.desk.text.Ink;

/** How many characters a line may have: those of the terminal, or a hundred where nobody can tell. */
final class LineWidth {
    static final int IN_FILES = 100;
    private static final int LEAST = 60;
    private static final int MOST = 160;
    private static final long PATIENCE = 200; // ms for the terminal to answer
    private static final Pattern ROWS_AND_COLUMNS = Pattern.compile("\\d+ (\\d+)\\s*");

    private LineWidth() {}

    static int of(Ink ink) {
        return ink == Ink.TERMINAL
                ? stated(System.getenv("COLUMNS"))
                        .or(LineWidth::asked)
                        .map(width -> Math.max(LEAST, Math.min(MOST, width)))
                        .orElse(IN_FILES)
                : IN_FILES;
    }

    private static Optional<Integer> stated(String columns) {
        return Optional.ofNullable(columns)
                .filter(text -> text.matches("[1-9]\\d{0,3}"))
                .map(Integer::valueOf);
    }

    /** What the terminal on standard input says; nothing where there is none, or no such program. */
    private static Optional<Integer> asked() {
        try {
            Process stty = new ProcessBuilder("stty", "size")
                    .redirectInput(ProcessBuilder.Redirect.INHERIT)
                    .start();
            if (!stty.waitFor(PATIENCE, TimeUnit.MILLISECONDS)) {
                stty.destroy();
                return Optional.empty();
            }
            String told = new String(stty.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
            Matcher size = ROWS_AND_COLUMNS.matcher(told);
            return size.matches() ? stated(size.group(1)) : Optional.empty();
        } catch (IOException none) {
            return Optional.empty();
        } catch (InterruptedException again) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }
}
