package swashlight.browser;

import java.util.List;
import swashlight.drive.description.Dimension;
import swashlight.drive.description.Place;
import swashlight.drive.motion.Chambers;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionRun;
import swashlight.drive.trace.Signal;

/** Everything a run can tell of itself, chamber by chamber. */
final class ChamberSignals {
    private ChamberSignals() {}

    /** The channels, then six signals a chamber: pressure, position, flow from A, flow from B, leak, port. */
    static List<Signal> with(MotionRun run) {
        List<Signal> signals = Signal.all(MotionChannel.values());
        for (Place place : Place.values()) {
            Chambers chambers = run.chambers(place);
            for (int k = 0; k < chambers.count(); k++) {
                chamber(signals, place, k);
            }
        }
        return signals;
    }

    private static void chamber(List<Signal> signals, Place place, int k) {
        signals.add(Signal.pressure(place, k));
        signals.add(Signal.position(place, k));
        String key = Key.of(place) + "_chamber_" + (k + 1);
        signals.add(Signal.computed(
                key + "_from_side_a",
                Dimension.FLOW,
                "oil from side A into one chamber",
                run -> run.chambers(place).fromSideA(k)));
        signals.add(Signal.computed(
                key + "_from_side_b",
                Dimension.FLOW,
                "oil from side B into one chamber",
                run -> run.chambers(place).fromSideB(k)));
        signals.add(Signal.computed(
                key + "_leak",
                Dimension.FLOW,
                "oil out of one chamber past its piston and shoe",
                run -> run.chambers(place).leak(k)));
        signals.add(Signal.computed(
                key + "_port",
                Dimension.NUMBER,
                "which port one chamber is open to",
                run -> run.chambers(place).zone(k).ordinal()));
    }
}
