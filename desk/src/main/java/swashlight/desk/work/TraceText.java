package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import swashlight.drive.description.Dimension;
import swashlight.drive.description.Place;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionRun;
import swashlight.drive.trace.Signal;
import swashlight.drive.trace.Trace;

/**
 * Traces as CSV for other programs: every column a plain number in SI, its unit in its name, every row full.
 *
 * <p>Pressures are absolute. Numbers are the shortest that read back to the same bits.
 */
final class TraceText {
    private TraceText() {}

    /** Every channel, and the pressure of every chamber. */
    static List<Signal> signals(MotionRun run) {
        List<Signal> signals = new ArrayList<>(Signal.all(MotionChannel.values()));
        for (Place place : List.of(Place.PUMP, Place.MOTOR)) {
            for (int k = 0; k < run.chambers(place).count(); k++) {
                signals.add(Signal.pressure(place, k));
            }
        }
        return signals;
    }

    static String of(Trace trace) {
        StringBuilder text = new StringBuilder("time_s");
        for (Signal signal : trace.signals()) {
            text.append(',').append(column(signal));
        }
        text.append("\r\n");
        for (int row = 0; row < trace.rows(); row++) {
            text.append(trace.time(row));
            for (int i = 0; i < trace.signals().size(); i++) {
                text.append(',').append(trace.value(row, i));
            }
            text.append("\r\n");
        }
        return text.toString();
    }

    /** A signal's name with its unit. */
    static String column(Signal signal) {
        return signal.key() + "_" + unit(signal.dimension());
    }

    static String unit(Dimension dimension) {
        return switch (dimension) {
            case PRESSURE -> "pa";
            case ANGLE -> "rad";
            case ROTATION -> "rad_per_s";
            case SPEED -> "m_per_s";
            case TORQUE -> "nm";
            case FORCE -> "n";
            case FLOW -> "m3_per_s";
            case TEMPERATURE -> "k";
            case LENGTH -> "m";
            case TIME -> "s";
            case NUMBER -> "ratio";
            default -> throw new IllegalStateException("no column has been named for " + dimension);
        };
    }
}
