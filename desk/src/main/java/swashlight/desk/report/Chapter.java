package swashlight.desk.report;

import java.util.List;

/**
 * A heading with what stands under it.
 *
 * @param key its stable name
 * @param lines under the heading
 */
public record Chapter(String key, List<Line> lines) implements Line {
    public Chapter {
        lines = List.copyOf(lines);
    }

    /** A chapter of some lines. */
    public static Chapter of(String key, Line... lines) {
        return new Chapter(key, List.of(lines));
    }
}
