package swashlight.drive.heat;

import java.util.List;

/** A duty held from a starting temperature: how temperature and speed go. */
public sealed interface WarmUp {
    /** The moments computed, first to last. */
    List<WarmPoint> points();

    /** Followed to the end within a tolerance (error bound kept, K). */
    record Followed(List<WarmPoint> points, double tolerance) implements WarmUp {
        public Followed {
            points = List.copyOf(points);
        }

        /** Temperature at a time (s) between the moments computed, K. */
        public double temperatureAt(double time) {
            WarmPoint before = points.get(0);
            for (WarmPoint after : points) {
                if (after.time() >= time) {
                    double span = after.time() - before.time();
                    double share = span > 0 ? (time - before.time()) / span : 0;
                    return before.temperature() + share * (after.temperature() - before.temperature());
                }
                before = after;
            }
            return before.temperature();
        }
    }

    /** Stopped early: why, and what was computed before. */
    record Stopped(List<WarmPoint> points, String reason) implements WarmUp {
        public Stopped {
            points = List.copyOf(points);
        }
    }
}
