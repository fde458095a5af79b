package swashlight.browser.proof;

import java.util.HashMap;
import java.util.Map;
import org.teavm.jso.JSExport;
import swashlight.checks.CheckRow;
import swashlight.checks.Measure;
import swashlight.checks.Status;
import swashlight.drive.checks.Laws;

/** The module that tests load. */
public final class Proof {
    private Proof() {}

    /** A function of {@link Functions}, by its place there, at every pair of numbers. */
    @JSExport
    public static double[] values(int function, double[] a, double[] b) {
        return Functions.values(function, a, b);
    }

    /**
     * What a law answers to a published value.
     *
     * @param theme of the book
     * @param id of the row, which names its law
     * @param names of its inputs
     * @param texts the inputs as printed
     */
    @JSExport
    public static double answer(String theme, String id, String[] names, String[] texts) {
        Map<String, String> inputs = new HashMap<>();
        for (int i = 0; i < names.length; i++) {
            inputs.put(names[i], texts[i]);
        }
        CheckRow row =
                new CheckRow(id, "asked", inputs, new Measure("0", "1"), 0, 1, "asked", "asked", Status.SEEN, "");
        return Laws.byTheme().get(theme).applyAsDouble(row);
    }
}
