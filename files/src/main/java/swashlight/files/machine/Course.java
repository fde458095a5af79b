package swashlight.files.machine;

import java.util.ArrayList;
import java.util.List;
import swashlight.drive.motion.Timeline;

/** One key's values over time while they are read; SI. */
final class Course {
    private final List<Double> times = new ArrayList<>(); // s
    private final List<Double> values = new ArrayList<>();

    void add(double time, double value) {
        times.add(time);
        values.add(value);
    }

    boolean any() {
        return !times.isEmpty();
    }

    /** Through all moments; from the value stated for the beginning where there is one, else level before the first moment. */
    Timeline line(boolean begins, double stated) {
        if (times.isEmpty()) {
            return Timeline.constant(stated);
        }
        if (begins && times.get(0) > 0) {
            times.add(0, 0.0);
            values.add(0, stated);
        }
        return Timeline.through(
                times.stream().mapToDouble(Double::doubleValue).toArray(),
                values.stream().mapToDouble(Double::doubleValue).toArray());
    }
}
