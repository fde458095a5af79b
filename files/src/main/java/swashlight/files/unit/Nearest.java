package swashlight.files.unit;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The word somebody probably meant: fewest letters added, left out, changed or swapped. */
public final class Nearest {
    private static final int LONGEST = 60; // letters; longer words are nobody's typing slip

    private Nearest() {}

    /** The nearest of the words, if one is near enough (a third of its letters). */
    public static Optional<String> to(String written, Collection<String> words) {
        if (written.length() > LONGEST) {
            return Optional.empty();
        }
        String best = "";
        int least = Integer.MAX_VALUE;
        for (String word : words) {
            int distance = distance(written.toLowerCase(Locale.ROOT), word.toLowerCase(Locale.ROOT));
            if (distance < least) {
                least = distance;
                best = word;
            }
        }
        return least <= Math.max(1, best.length() / 3) ? Optional.of(best) : Optional.empty();
    }

    /** Optimal string alignment distance. */
    static int distance(String a, String b) {
        int[][] table = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                table[i][j] = i == 0 ? j : j == 0 ? i : step(a, b, table, i, j);
            }
        }
        return table[a.length()][b.length()];
    }

    private static int step(String a, String b, int[][] table, int i, int j) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(table[i - 1][j - 1] + change, Math.min(table[i - 1][j], table[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, table[i - 2][j - 2] + 1) : least;
    }
}
