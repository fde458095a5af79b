package swashlight.drive.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.HeatParameter;
import swashlight.drive.description.InputParameter;
import swashlight.drive.description.OutputParameter;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;

/**
 * A launch of 7 + 7 pistons against the same equations written again in C and integrated by CVODE at 1e-8 ({@code bench/peers}); its numbers
 * stand in {@code launch-by-cvode.csv}. When what is usual for a drive changes, {@code bench/peers/run} makes them anew.
 */
final class BesideCvodeTest {
    private static final double TOLERANCE = 1e-4;
    private static final double WINDOW = 0.02; // s: a turn at 3000 rpm
    private static final int WINDOWS = 50;
    private static final double RPM = 2 * Math.PI / 60; // rad/s
    private static final double MEANS = 2e-4; // of the channel's size
    private static final double SWINGS = 3e-3;

    private static final Map<MotionChannel, double[]> MEAN = new HashMap<>();
    private static final Map<MotionChannel, double[]> SWING = new HashMap<>();

    private static DriveDescription drive() {
        Map<Parameter, Quantity> known = new HashMap<>();
        known.put(UnitParameter.pump(UnitProperty.DISPLACEMENT), Quantity.given(7.1e-6));
        known.put(UnitParameter.pump(UnitProperty.PISTON_COUNT), Quantity.given(7));
        known.put(UnitParameter.motor(UnitProperty.DISPLACEMENT), Quantity.given(10e-6));
        known.put(UnitParameter.motor(UnitProperty.PISTON_COUNT), Quantity.given(7));
        known.put(InputParameter.ENGINE_NO_LOAD_SPEED, Quantity.given(3200 * RPM));
        known.put(InputParameter.ENGINE_RATED_TORQUE, Quantity.given(26));
        known.put(InputParameter.BELT_SPEED_RATIO, Quantity.given(3000.0 / 3200));
        known.put(OutputParameter.GEARS_RATIO, Quantity.given(28));
        known.put(OutputParameter.WHEELS_ROLLING_RADIUS, Quantity.given(0.24));
        known.put(OutputParameter.MACHINE_MASS, Quantity.given(330));
        known.put(HeatParameter.CAPACITY, Quantity.given(5e5));
        return TypicalDrive.complete("launch", true, known);
    }

    @BeforeAll
    static void launch() {
        Timeline stroke = Timeline.through(new double[] {0, 0.5}, new double[] {0, 1});
        MotionDuty duty = MotionDuty.driving(stroke, Math.atan(0.1), 333.15);
        MotionRun run = new MovingDrive(drive()).start(duty, MotionStart.AT_REST, TOLERANCE);
        for (MotionChannel channel : MotionChannel.values()) {
            MEAN.put(channel, new double[WINDOWS]);
            SWING.put(channel, new double[WINDOWS]);
        }
        for (int window = 0; window < WINDOWS; window++) {
            window(run, window);
        }
        assertThat(Math.abs(run.oilDrift())).isLessThan(1e-12);
    }

    private static void window(MotionRun run, int window) {
        MotionChannel[] channels = MotionChannel.values();
        double[] last = new double[channels.length];
        double[] low = new double[channels.length];
        double[] high = new double[channels.length];
        for (MotionChannel channel : channels) {
            int i = channel.ordinal();
            last[i] = low[i] = high[i] = run.value(channel);
        }
        double[] before = {run.time()};
        run.advance((window + 1) * WINDOW, at -> {
            for (MotionChannel channel : channels) {
                int i = channel.ordinal();
                double now = at.value(channel);
                MEAN.get(channel)[window] += (at.time() - before[0]) * (last[i] + now) / 2 / WINDOW;
                last[i] = now;
                low[i] = Math.min(low[i], now);
                high[i] = Math.max(high[i], now);
            }
            before[0] = at.time();
        });
        for (MotionChannel channel : channels) {
            SWING.get(channel)[window] = high[channel.ordinal()] - low[channel.ordinal()];
        }
    }

    static List<String> rows() throws IOException {
        try (InputStream file = BesideCvodeTest.class.getResourceAsStream("launch-by-cvode.csv")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("channel"))
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void meansAndSwingsMeetCvode(String row) {
        String[] cells = row.split(",");
        MotionChannel channel = MotionChannel.valueOf(cells[0]);
        double size = 0;
        for (int part = 0; part < 4; part++) {
            size = Math.max(size, Math.abs(Double.parseDouble(cells[1 + part])));
        }
        for (int part = 0; part < 4; part++) {
            double mean = mean(MEAN.get(channel), 10 + 10 * part, 20 + 10 * part);
            assertThat(mean).as("mean %d", part).isCloseTo(Double.parseDouble(cells[1 + part]), within(MEANS * size));
        }
        double swing = Double.parseDouble(cells[5]);
        assertThat(mean(SWING.get(channel), 10, WINDOWS)).as("swing").isCloseTo(swing, within(SWINGS * swing));
    }

    private static double mean(double[] values, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += values[i];
        }
        return sum / (to - from);
    }
}
