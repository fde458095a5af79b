package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Place;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionRun;
import swashlight.drive.trace.Signal;
import swashlight.drive.trace.Trace;
import swashlight.files.document.QuotedText;

/** A run frame by frame as JSON, for something that moves pictures: docs/moving.md says what stands where. SI, pressures absolute. */
final class FramesText {
    private static final List<MotionChannel> CHANNELS = List.of(
            MotionChannel.PUMP_ANGLE,
            MotionChannel.MOTOR_ANGLE,
            MotionChannel.SWASH_ANGLE,
            MotionChannel.PRESSURE_A,
            MotionChannel.PRESSURE_B,
            MotionChannel.GALLERY_PRESSURE,
            MotionChannel.MAKE_UP_FLOW,
            MotionChannel.CASE_LEAK,
            MotionChannel.GROUND_SPEED);
    private static final List<Place> PLACES = List.of(Place.PUMP, Place.MOTOR);
    private static final int EACH = 3; // numbers of a chamber

    private FramesText() {}

    /** What a frame needs: channels, then position, pressure and flow of each chamber of pump and motor. */
    static List<Signal> signals(MotionRun run) {
        List<Signal> signals = new ArrayList<>(Signal.all(CHANNELS.toArray(MotionChannel[]::new)));
        for (Place place : PLACES) {
            int count = run.chambers(place).count();
            for (int k = 0; k < count; k++) {
                signals.add(Signal.position(place, k));
            }
            for (int k = 0; k < count; k++) {
                signals.add(Signal.pressure(place, k));
            }
            for (int k = 0; k < count; k++) {
                signals.add(Signal.portFlow(place, k));
            }
        }
        return signals;
    }

    static String of(Trace trace, DriveDescription drive, String duty, double interval) {
        StringBuilder text = new StringBuilder("{\n");
        text.append("\"format\": 1,\n\"kind\": \"frames\",\n");
        text.append("\"drive\": ").append(quoted(drive.name())).append(",\n");
        text.append("\"duty\": ").append(quoted(duty)).append(",\n");
        text.append("\"frame_interval_s\": ").append(interval).append(",\n");
        for (Place place : PLACES) {
            text.append(quoted(name(place)))
                    .append(": ")
                    .append(unit(drive, place))
                    .append(",\n");
        }
        text.append("\"frames\": [\n");
        for (int row = 0; row < trace.rows(); row++) {
            text.append(frame(trace, row, drive)).append(row + 1 < trace.rows() ? ",\n" : "\n");
        }
        return text.append("]\n}\n").toString();
    }

    private static String unit(DriveDescription drive, Place place) {
        return "{\"pistons\": " + pistons(drive, place) + ", \"pitch_radius_m\": "
                + number(drive.value(new UnitParameter(place, UnitProperty.PITCH_RADIUS))) + ", \"piston_diameter_m\": "
                + number(drive.value(new UnitParameter(place, UnitProperty.PISTON_DIAMETER))) + "}";
    }

    private static String frame(Trace trace, int row, DriveDescription drive) {
        StringJoiner fields = new StringJoiner(", ", "{", "}");
        fields.add("\"time_s\": " + number(trace.time(row)));
        int column = 0;
        for (; column < CHANNELS.size(); column++) {
            Signal signal = trace.signals().get(column);
            fields.add(quoted(TraceText.column(signal)) + ": " + number(trace.value(row, column)));
        }
        for (Place place : PLACES) {
            int count = pistons(drive, place);
            fields.add(quoted(name(place)) + ": {\"position_m\": " + numbers(trace, row, column, count)
                    + ", \"pressure_pa\": " + numbers(trace, row, column + count, count)
                    + ", \"port_flow_m3_per_s\": " + numbers(trace, row, column + 2 * count, count) + "}");
            column += EACH * count;
        }
        return fields.toString();
    }

    private static int pistons(DriveDescription drive, Place place) {
        return (int) drive.value(new UnitParameter(place, UnitProperty.PISTON_COUNT));
    }

    private static String numbers(Trace trace, int row, int from, int count) {
        StringJoiner numbers = new StringJoiner(", ", "[", "]");
        for (int i = 0; i < count; i++) {
            numbers.add(number(trace.value(row, from + i)));
        }
        return numbers.toString();
    }

    /** Seven digits or so: enough to draw. */
    private static String number(double value) {
        return Float.toString((float) value);
    }

    private static String name(Place place) {
        return place == Place.PUMP ? "pump" : "motor";
    }

    private static String quoted(String text) {
        return QuotedText.of(text);
    }
}
