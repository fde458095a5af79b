package swashlight.browser.proof;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;

/** Every function of {@code Math} that physics and findings use, and what else the machine does to numbers and has no name. */
public final class Functions {
    private Functions() {}

    /** By name and parameter types. */
    public static Map<String, DoubleBinaryOperator> all() {
        Map<String, DoubleBinaryOperator> all = new LinkedHashMap<>();
        all.put("abs(double)", (a, b) -> Math.abs(a));
        all.put("abs(int)", (a, b) -> Math.abs(whole(a)));
        all.put("atan(double)", (a, b) -> Math.atan(a));
        all.put("ceil(double)", (a, b) -> Math.ceil(a));
        all.put("cos(double)", (a, b) -> Math.cos(a));
        all.put("exp(double)", (a, b) -> Math.exp(a));
        all.put("floor(double)", (a, b) -> Math.floor(a));
        all.put("log(double)", (a, b) -> Math.log(a));
        all.put("max(double, double)", Math::max);
        all.put("max(int, int)", (a, b) -> Math.max(whole(a), whole(b)));
        all.put("max(long, long)", (a, b) -> Math.max(longer(a), longer(b)));
        all.put("min(double, double)", Math::min);
        all.put("min(int, int)", (a, b) -> Math.min(whole(a), whole(b)));
        all.put("pow(double, double)", Math::pow);
        all.put("signum(double)", (a, b) -> Math.signum(a));
        all.put("sin(double)", (a, b) -> Math.sin(a));
        all.put("sqrt(double)", (a, b) -> Math.sqrt(a));
        all.put("tan(double)", (a, b) -> Math.tan(a));
        all.put("toRadians(double)", (a, b) -> Math.toRadians(angle(a)));
        all.putAll(unnamed());
        return all;
    }

    /** What has no name in byte code, or not Math's: conversions, division, comparison, bits. */
    public static Map<String, DoubleBinaryOperator> unnamed() {
        Map<String, DoubleBinaryOperator> all = new LinkedHashMap<>();
        all.put("(int) a", (a, b) -> whole(a));
        all.put("(long) a", (a, b) -> longer(a));
        all.put("a / b", (a, b) -> a / b);
        all.put("Double.compare", Double::compare);
        all.put("bits and back", (a, b) -> Double.longBitsToDouble(Double.doubleToRawLongBits(a) + 1));
        all.put("high bits", (a, b) -> (int) (Double.doubleToRawLongBits(a) >>> 40));
        return all;
    }

    /** No angle is larger or smaller: TeaVM multiplies by π before it divides, which leaves the range of numbers there. */
    private static double angle(double a) {
        return Math.abs(a) < 1e300 && Math.abs(a) > 1e-300 ? a : 0;
    }

    /** Only inside its range: past it the JVM and WebAssembly stay at the end, JavaScript wraps around. */
    private static int whole(double a) {
        return Math.abs(a) < 2147483648.0 ? (int) a : 0;
    }

    /** Only inside its range: past it the JVM and WebAssembly stay at the end, JavaScript refuses what is not finite. */
    private static long longer(double a) {
        return Math.abs(a) < 9.223372036854775807e18 ? (long) a : 0;
    }

    static double[] values(int function, double[] a, double[] b) {
        DoubleBinaryOperator operator = List.copyOf(all().values()).get(function);
        double[] values = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            values[i] = operator.applyAsDouble(a[i], b[i]);
        }
        return values;
    }
}
