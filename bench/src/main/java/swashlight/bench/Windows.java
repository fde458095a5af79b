package swashlight.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionRun;
import swashlight.drive.motion.MotionWatcher;

/** Mean and swing of every compared channel in each window of 20 ms, a turn at 3000 rpm; straight between steps. */
final class Windows implements MotionWatcher {
    static final double LENGTH = 0.02; // s
    static final int COUNT = (int) Math.round(Launch.UNTIL / LENGTH);
    static final List<MotionChannel> CHANNELS = List.of(
            MotionChannel.PRESSURE_A,
            MotionChannel.PRESSURE_B,
            MotionChannel.GALLERY_PRESSURE,
            MotionChannel.PUMP_TORQUE,
            MotionChannel.MOTOR_TORQUE,
            MotionChannel.MOTOR_SPEED,
            MotionChannel.GROUND_SPEED,
            MotionChannel.MAKE_UP_FLOW);

    private final double[] before = new double[CHANNELS.size()];
    private final double[][] sum = new double[CHANNELS.size()][COUNT];
    private final double[][] low = new double[CHANNELS.size()][COUNT];
    private final double[][] high = new double[CHANNELS.size()][COUNT];
    private double last; // s

    Windows(MotionRun run) {
        for (int i = 0; i < before.length; i++) {
            before[i] = run.value(CHANNELS.get(i));
            Arrays.fill(low[i], Double.POSITIVE_INFINITY);
            Arrays.fill(high[i], Double.NEGATIVE_INFINITY);
        }
    }

    @Override
    public void stepped(MotionRun run) {
        double now = run.time();
        for (int i = 0; i < before.length; i++) {
            double value = run.value(CHANNELS.get(i));
            line(i, last, now, before[i], value);
            before[i] = value;
        }
        last = now;
    }

    private void line(int channel, double begin, double end, double first, double second) {
        double slope = (second - first) / (end - begin);
        double from = begin;
        while (from < end) {
            int window = (int) (from / LENGTH + 1e-9);
            double to = Math.min(end, (window + 1) * LENGTH);
            if (to <= from || window >= COUNT) {
                break;
            }
            double a = first + slope * (from - begin);
            double b = first + slope * (to - begin);
            sum[channel][window] += (to - from) * (a + b) / 2;
            low[channel][window] = Math.min(low[channel][window], Math.min(a, b));
            high[channel][window] = Math.max(high[channel][window], Math.max(a, b));
            from = to;
        }
    }

    /** Two lines a channel: means, swings. */
    String written() {
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < before.length; i++) {
            for (int w = 0; w < COUNT; w++) {
                lines.append(String.format(Locale.ROOT, "%.10g ", sum[i][w] / LENGTH));
            }
            lines.append('\n');
            for (int w = 0; w < COUNT; w++) {
                lines.append(String.format(Locale.ROOT, "%.10g ", high[i][w] - low[i][w]));
            }
            lines.append('\n');
        }
        return lines.toString();
    }
}
