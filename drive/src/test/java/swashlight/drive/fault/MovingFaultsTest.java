package swashlight.drive.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionDuty;
import swashlight.drive.motion.MotionPlan;
import swashlight.drive.motion.MotionRun;
import swashlight.drive.motion.MotionStart;
import swashlight.drive.motion.MovingDrive;
import swashlight.drive.motion.NamedDuty;
import swashlight.drive.motion.Timeline;
import swashlight.drive.steady.InputState;
import swashlight.drive.trace.CycleMeter;
import swashlight.drive.trace.OrderMeter;
import swashlight.drive.trace.Pace;
import swashlight.drive.trace.Signal;

/**
 * Law: every single fault, at its usual severity, changes the moving drive the way it must; which way is common practice, no source.
 *
 * <p>Columns: fault, duty, half of it (1 or 2), channel, whether its mean becomes more or less, and by at least how much of its size.
 */
final class MovingFaultsTest {
    private static final String ROWS = """
            pump-bores-worn      | hill        | 2 | GROUND_SPEED    | less | 0.002
            pump-bad-piston      | hill        | 2 | GROUND_SPEED    | less | 0.002
            pump-spring-broken   | hill        | 2 | GROUND_SPEED    | less | 0.05
            pump-piston-sticks   | hill        | 2 | GROUND_SPEED    | less | 0.05
            pump-face-worn       | hill        | 2 | GROUND_SPEED    | less | 0.002
            pump-face-scored     | hill        | 2 | CASE_LEAK       | more | 0.05
            pump-bridge-scored   | hold        | 2 | GROUND_SPEED    | less | 0.001
            motor-bores-worn     | hill        | 2 | GROUND_SPEED    | less | 0.002
            motor-bad-piston     | hill        | 2 | GROUND_SPEED    | less | 0.002
            motor-spring-broken  | hill        | 2 | PRESSURE_A      | more | 0.05
            motor-piston-sticks  | hill        | 2 | PRESSURE_A      | more | 0.05
            motor-face-worn      | hill        | 2 | GROUND_SPEED    | less | 0.002
            motor-face-scored    | hill        | 2 | CASE_LEAK       | more | 0.05
            motor-bridge-scored  | hold        | 2 | GROUND_SPEED    | less | 0.001
            crack-a              | hill        | 2 | CASE_LEAK       | more | 0.5
            crack-b              | reverse     | 2 | CASE_LEAK       | more | 0.5
            crack-ab             | hill        | 2 | GROUND_SPEED    | less | 0.002
            filter-blocked       | hill        | 2 | LOWEST_CHAMBER  | less | 0.05
            air-leak             | hill        | 2 | GROUND_SPEED    | less | 0.005
            oil-low              | hill        | 2 | GROUND_SPEED    | less | 0.005
            check-a-leaks        | hill        | 2 | GROUND_SPEED    | less | 0.005
            check-a-stuck-open   | hill        | 2 | GROUND_SPEED    | less | 0.05
            check-a-stuck-shut   | reverse     | 2 | LOWEST_CHAMBER  | less | 0.05
            bleed-a-wrong        | hill        | 2 | GROUND_SPEED    | less | 0.005
            check-b-leaks        | reverse     | 2 | GROUND_SPEED    | more | 0.005
            check-b-stuck-open   | reverse     | 2 | GROUND_SPEED    | more | 0.05
            check-b-stuck-shut   | hill        | 2 | LOWEST_CHAMBER  | less | 0.05
            bleed-b-wrong        | reverse     | 2 | GROUND_SPEED    | more | 0.005
            bypass-not-closed    | hill        | 2 | GROUND_SPEED    | less | 0.005
            bypass-left-open     | hill        | 2 | GROUND_SPEED    | less | 0.5
            bypass-stuck         | bypass-push | 1 | PUSH_FORCE      | more | 0.5
            linkage-play         | hill        | 2 | GROUND_SPEED    | less | 0.02
            forward-travel-short | hill        | 2 | GROUND_SPEED    | less | 0.02
            reverse-travel-short | reverse     | 2 | GROUND_SPEED    | more | 0.02
            neutral-forward      | hold        | 2 | GROUND_SPEED    | more | 0.5
            neutral-reverse      | hold        | 2 | GROUND_SPEED    | less | 0.5
            return-weak          | reverse     | 2 | GROUND_SPEED    | more | 0.05
            pump-thrust-worn     | hill        | 2 | INPUT_TORQUE    | more | 0.02
            motor-thrust-worn    | hill        | 2 | PRESSURE_A      | more | 0.02
            oil-too-thin         | hill        | 2 | GROUND_SPEED    | less | 0.002
            oil-degraded         | hill        | 2 | GROUND_SPEED    | less | 0.001
            oil-aerated          | hill        | 2 | GROUND_SPEED    | less | 0.005
            oil-overheated       | hill        | 2 | GROUND_SPEED    | less | 0.002
            oil-wet              | starving    | 2 | LOWEST_CHAMBER  | more | 0.05
            belt-worn            | hill        | 2 | PUMP_SPEED      | less | 0.002
            engine-slow          | hill        | 2 | GROUND_SPEED    | less | 0.05
            engine-weak          | cold-start  | 2 | ENGINE_SPEED    | less | 0.02
            pulley-wrong         | hill        | 2 | GROUND_SPEED    | less | 0.05
            input-key-sheared    | hill        | 2 | PUMP_SPEED      | less | 0.5
            gears-damaged        | hill        | 2 | PRESSURE_A      | more | 0.05
            axle-key-sheared     | hill        | 2 | GROUND_SPEED    | less | 0.5
            brake-drags          | hill        | 2 | PRESSURE_A      | more | 0.05
            brake-weak           | braked      | 2 | GROUND_SPEED    | less | 0.5
            differential-tight   | hill        | 2 | PRESSURE_A      | more | 0.05
            tyre-small           | hill        | 2 | GROUND_SPEED    | less | 0.02
            tyre-grip-poor       | hill        | 2 | WHEEL_SLIP      | more | 0.05
            overload             | hill        | 2 | PRESSURE_A      | more | 0.05
            duty-steep           | hill        | 2 | PRESSURE_A      | more | 0.05
            fan-broken           | hill        | 2 | OIL_TEMPERATURE | more | 1e-5
            fins-packed          | hill        | 2 | OIL_TEMPERATURE | more | 1e-5
            """;
    private static final DriveDescription DRIVE = TypicalDrive.complete("any", true, Map.of());
    private static final MotionChannel[] CHANNELS = MotionChannel.values();
    private static final double COARSE = 1e-2;
    private static final Map<String, double[][]> SOUND = new HashMap<>();

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = ROWS)
    void changesTheMovingDriveAsItMust(
            String key, String duty, int half, MotionChannel channel, String way, double least) {
        Fault fault = Faults.find(key).orElseThrow();
        double sound = SOUND.computeIfAbsent(duty, name -> means(drive(name), plan(name)))[half - 1][channel.ordinal()];
        DriveDescription sick = fault.on(drive(duty), fault.usual());
        MotionPlan plan = plan(duty);
        double there = means(sick, plan.with(fault.on(plan.duty(), fault.usual())))[half - 1][channel.ordinal()];
        double change = (there - sound) * (way.equals("more") ? 1 : -1);
        assertThat(change)
                .as(channel + " goes from " + sound + " to " + there)
                .isGreaterThan(least * Math.max(Math.abs(sound), 1e-9));
    }

    @Test
    void noFaultIsForgotten() {
        Stream<String> keys =
                ROWS.lines().map(row -> row.substring(0, row.indexOf('|')).strip());
        assertThat(keys)
                .containsExactlyInAnyOrderElementsOf(
                        Faults.all().stream().map(Fault::key).toList());
    }

    /** A fault of one piston is heard: it swings once a turn, which a sound unit of equal pistons cannot. */
    @ParameterizedTest
    @ValueSource(strings = {"pump-spring-broken", "pump-piston-sticks", "pump-bad-piston"})
    void onePistonOutOfStepIsHeardOnceATurn(String key) {
        Fault fault = Faults.find(key).orElseThrow();
        double sick = onceATurn(fault.on(DRIVE, fault.usual()));
        assertThat(sick).isGreaterThan(10 * onceATurn(DRIVE));
    }

    /** Amplitude of the oil's torque on the pump at order 1 of its shaft, N·m. */
    private static double onceATurn(DriveDescription drive) {
        MotionDuty duty = MotionDuty.driving(Timeline.constant(1), 0.1, 353.15).with(new InputState.Fixed(300));
        MotionRun run = new MovingDrive(drive).start(duty, MotionStart.SETTLED, MotionRun.USUAL_TOLERANCE);
        run.advance(0.8);
        OrderMeter meter = new OrderMeter(run, List.of(Signal.of(MotionChannel.PUMP_TORQUE)), Pace.PUMP_SHAFT, 16);
        run.advance(1.2, meter);
        return meter.spectrum().orElseThrow().at(0, 1);
    }

    private static DriveDescription drive(String duty) {
        Fault filter = Faults.find("filter-blocked").orElseThrow();
        return duty.equals("starving") ? filter.on(DRIVE, filter.most()) : DRIVE;
    }

    private static MotionPlan plan(String duty) {
        return switch (duty) {
            case "braked" ->
                new MotionPlan(
                        MotionDuty.driving(Timeline.constant(0), 0.2, 333.15)
                                .change()
                                .brake(Timeline.constant(1))
                                .build(),
                        MotionStart.AT_REST,
                        2);
            case "starving" ->
                new MotionPlan(MotionDuty.driving(Timeline.constant(1), 0.15, 373.15), MotionStart.AT_REST, 2);
            default -> NamedDuty.find(duty).orElseThrow().plan();
        };
    }

    /** Means of all channels over both halves of a duty. */
    private static double[][] means(DriveDescription drive, MotionPlan plan) {
        MotionRun run = new MovingDrive(drive).start(plan.duty(), plan.start(), COARSE);
        CycleMeter meter = new CycleMeter(run, Signal.all(CHANNELS), Pace.TIME, plan.duration() / 2 * (1 - 1e-9));
        assertThat(run.advance(plan.duration(), meter)).isTrue();
        double[][] means = new double[2][CHANNELS.length];
        for (int half = 0; half < 2; half++) {
            for (int i = 0; i < CHANNELS.length; i++) {
                means[half][i] = meter.cycles().one(i, half).mean();
            }
        }
        return means;
    }
}
