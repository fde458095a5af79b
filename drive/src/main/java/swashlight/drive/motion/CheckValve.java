package swashlight.drive.motion;

import swashlight.drive.description.LoopParameter;
import swashlight.drive.gap.Orifice;

/**
 * The opening of one make-up check valve with its bleed orifice and its leak; area over pressure difference from gallery to side.
 *
 * <pre>
 *   a = bleed + leak + full · lift,   lift = S((Δp − crack) / span) held between least and reach,   S(u) = u² (3 − 2u)
 * </pre>
 *
 * Laws and parameters are those of the steady view. SI.
 */
final class CheckValve {
    final double bleed; // m²
    private final double always; // bleed and leak, m²
    private final double full; // m²
    private final double crack; // Pa
    private final double span; // Pa
    private final double least; // lift, 1
    private final double reach; // lift, 1

    double area; // m²
    double areaSlope; // m²/Pa

    private CheckValve(double[] vector, double bleed, LoopParameter leak, LoopParameter least, LoopParameter reach) {
        this.bleed = bleed;
        always = bleed + vector[leak.index()];
        full = vector[LoopParameter.CHECK_AREA.index()];
        crack = vector[LoopParameter.CHECK_CRACK.index()];
        span = vector[LoopParameter.CHECK_SPAN.index()];
        this.least = vector[least.index()];
        this.reach = vector[reach.index()];
    }

    static CheckValve a(double[] vector) {
        return new CheckValve(
                vector,
                Orifice.area(vector[LoopParameter.BLEED_A.index()]),
                LoopParameter.CHECK_A_LEAK,
                LoopParameter.CHECK_A_LIFT,
                LoopParameter.CHECK_A_REACH);
    }

    static CheckValve b(double[] vector) {
        return new CheckValve(
                vector,
                Orifice.area(vector[LoopParameter.BLEED_B.index()]),
                LoopParameter.CHECK_B_LEAK,
                LoopParameter.CHECK_B_LIFT,
                LoopParameter.CHECK_B_REACH);
    }

    /** Sets area and slope at a pressure difference, Pa. */
    void at(double difference) {
        double x = (difference - crack) / span;
        double lift = x <= 0 ? 0 : x >= 1 ? 1 : x * x * (3 - 2 * x);
        double liftSlope = x <= 0 || x >= 1 ? 0 : 6 * x * (1 - x) / span;
        if (lift < least || lift > reach) {
            lift = Math.max(least, Math.min(lift, reach));
            liftSlope = 0;
        }
        area = always + full * lift;
        areaSlope = full * liftSlope;
    }
}
