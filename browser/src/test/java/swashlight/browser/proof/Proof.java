package swashlight.browser.proof;

import org.teavm.jso.JSExport;

/** The module that tests load. */
public final class Proof {
    private Proof() {}

    /** A function of {@link Functions}, by its place there, at every pair of numbers. */
    @JSExport
    public static double[] values(int function, double[] a, double[] b) {
        return Functions.values(function, a, b);
    }
}
