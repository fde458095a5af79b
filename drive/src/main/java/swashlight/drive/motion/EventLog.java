package swashlight.drive.motion;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Notes beginnings and ends; remembers how often and how long each kind was, even past the most events kept. */
final class EventLog {
    private static final int MOST_KEPT = 20_000;
    private static final MotionEvent.Kind[] KINDS = MotionEvent.Kind.values();

    private final boolean[] on = new boolean[KINDS.length];
    private final double[] since = new double[KINDS.length];
    private final double[] first = new double[KINDS.length];
    private final int[] count = new int[KINDS.length];
    private final double[] lasting = new double[KINDS.length];
    private final List<MotionEvent> events = new ArrayList<>();

    void note(MotionEvent.Kind kind, boolean now, double time) {
        int k = kind.ordinal();
        if (now == on[k]) {
            return;
        }
        on[k] = now;
        double lasted = now ? 0 : time - since[k];
        if (now) {
            since[k] = time;
            if (count[k] == 0) {
                first[k] = time;
            }
            count[k]++;
        } else {
            lasting[k] += lasted;
        }
        if (events.size() < MOST_KEPT) {
            events.add(new MotionEvent(time, kind, now, lasted));
        }
    }

    List<MotionEvent> events() {
        return Collections.unmodifiableList(events);
    }

    double first(MotionEvent.Kind kind) {
        return first[kind.ordinal()];
    }

    int count(MotionEvent.Kind kind) {
        return count[kind.ordinal()];
    }

    double lasting(MotionEvent.Kind kind, double now) {
        int k = kind.ordinal();
        return lasting[k] + (on[k] ? now - since[k] : 0);
    }
}
