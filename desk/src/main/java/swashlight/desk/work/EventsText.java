package swashlight.desk.work;

import java.util.List;
import java.util.Locale;
import swashlight.drive.motion.MotionEvent;

/** Events as CSV for other programs, oldest first. */
final class EventsText {
    private EventsText() {}

    static String of(List<MotionEvent> events) {
        StringBuilder text = new StringBuilder("time_s,event,begins,lasted_s\r\n");
        for (MotionEvent event : events) {
            text.append(event.time())
                    .append(',')
                    .append(event.kind().name().toLowerCase(Locale.ROOT))
                    .append(',')
                    .append(event.begins())
                    .append(',')
                    .append(event.lasted())
                    .append("\r\n");
        }
        return text.toString();
    }
}
