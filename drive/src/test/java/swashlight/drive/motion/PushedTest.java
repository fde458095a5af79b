package swashlight.drive.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.HeatParameter;
import swashlight.drive.description.OutputParameter;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.heat.Cooling;
import swashlight.drive.steady.InputState;
import swashlight.drive.steady.SteadyAnswer;
import swashlight.drive.steady.SteadyDrive;
import swashlight.drive.steady.SteadyPoint;

/** Law: pushed at a given speed the moving view settles where the steady view, solved another way, says; and it heats as that says. */
final class PushedTest {
    private static final DriveDescription DRIVE = TypicalDrive.complete("any", true, Map.of());

    /** Speeds in m/s, bypass pulled 0 … 1, engine on or off. */
    @ParameterizedTest
    @CsvSource({"0.3, 1, false", "0.5, 1, true", "-0.4, 1, false", "0.3, 0, false", "-0.3, 0, true"})
    void settlesWhereTheSteadyViewSays(double speed, double bypass, boolean engine) {
        MotionDuty duty = MotionDuty.driving(Timeline.constant(engine ? 0.4 : 0), 0.03, 313.15)
                .pushed(Timeline.constant(speed))
                .change()
                .bypass(Timeline.constant(bypass))
                .input(engine ? new InputState.Running(1) : new InputState.Off())
                .build();
        MotionRun run = new MovingDrive(DRIVE).start(duty, MotionStart.SETTLED, MotionRun.USUAL_TOLERANCE);
        assertThat(run.advance(0.3)).isTrue();
        Means means = Means.over(run, 1.0);

        SteadyAnswer answer = new SteadyDrive(DRIVE).answer(duty.settledAt(0));
        assertThat(answer).isInstanceOf(SteadyAnswer.Converged.class);
        SteadyPoint steady = ((SteadyAnswer.Converged) answer).point();

        // slip is rounded near standstill in the moving view, so the speeds differ by it: two per cent of force at most
        double force = steady.pushForce(); // N
        assertThat(means.of(MotionChannel.PUSH_FORCE)).isCloseTo(force, within(0.01 * Math.abs(force) + 1.5));
        assertThat(means.of(MotionChannel.GROUND_SPEED)).isCloseTo(speed, within(1e-9));
        double heating = means.change(MotionChannel.OIL_TEMPERATURE) * DRIVE.value(HeatParameter.CAPACITY); // J
        double cooled = Cooling.of(DRIVE).conductance(means.of(MotionChannel.PUMP_SPEED))
                * (means.of(MotionChannel.OIL_TEMPERATURE) - duty.airTemperature()); // W
        assertThat(heating / means.time() + cooled)
                .isCloseTo(steady.heat(), within(0.01 * Math.abs(steady.heat()) + 0.5));
    }

    /** What pushes must also speed the machine up: force rises by mass times acceleration (Newton). */
    @Test
    void aSpeedThatRisesTakesTheForceOfItsAcceleration() {
        MotionDuty level = MotionDuty.driving(Timeline.constant(0), 0, 333.15)
                .pushed(Timeline.through(new double[] {0, 1, 1, 2}, new double[] {0.4, 0.4, 0.4, 0.6}))
                .change()
                .bypass(Timeline.constant(1))
                .input(new InputState.Off())
                .build();
        MotionRun run = new MovingDrive(DRIVE).start(level, MotionStart.SETTLED, MotionRun.USUAL_TOLERANCE);
        run.advance(1);
        double before = run.value(MotionChannel.PUSH_FORCE); // N
        run.advance(1.01);
        double after = run.value(MotionChannel.PUSH_FORCE); // N
        double mass =
                DRIVE.value(OutputParameter.MACHINE_MASS) * (1 + DRIVE.value(OutputParameter.MACHINE_ROTATING_SHARE));
        assertThat(after - before).isCloseTo(mass * 0.2, within(0.02 * mass * 0.2 + 1));
        run.advance(2);
        assertThat(run.value(MotionChannel.GROUND_SPEED)).isCloseTo(0.6, within(1e-9));
    }

    /** Speed over time, straight and with a jump, arrives as given. */
    @Test
    void theGivenSpeedIsKept() {
        Timeline speed = Timeline.through(new double[] {0, 0.1, 0.1, 0.2}, new double[] {0, 0.1, 0.2, -0.1});
        MotionDuty duty = MotionDuty.driving(Timeline.constant(0), 0, 333.15)
                .pushed(speed)
                .change()
                .bypass(Timeline.constant(1))
                .input(new InputState.Off())
                .build();
        MotionRun run = new MovingDrive(DRIVE).start(duty, MotionStart.AT_REST, MotionRun.USUAL_TOLERANCE);
        run.advance(0.2, at -> {
            if (Math.abs(at.time() - 0.1) > 1e-9) {
                assertThat(at.value(MotionChannel.GROUND_SPEED)).isCloseTo(speed.at(at.time()), within(1e-9));
            }
        });
        assertThat(run.time()).isEqualTo(0.2);
    }

    /** Means by the trapezium rule over the steps: plain and slow. */
    private record Means(double time, double[] sum, double[] change) {
        static Means over(MotionRun run, double time) {
            MotionChannel[] channels = MotionChannel.values();
            double[] sum = new double[channels.length];
            double[] last = new double[channels.length];
            double[] first = new double[channels.length];
            for (MotionChannel channel : channels) {
                first[channel.ordinal()] = last[channel.ordinal()] = run.value(channel);
            }
            double[] before = {run.time()};
            double end = run.time() + time;
            run.advance(end, at -> {
                for (MotionChannel channel : channels) {
                    int i = channel.ordinal();
                    sum[i] += (at.time() - before[0]) * (last[i] + at.value(channel)) / 2;
                    last[i] = at.value(channel);
                }
                before[0] = at.time();
            });
            double[] change = new double[channels.length];
            for (int i = 0; i < change.length; i++) {
                change[i] = last[i] - first[i];
            }
            return new Means(time, sum, change);
        }

        double of(MotionChannel channel) {
            return sum[channel.ordinal()] / time;
        }

        double change(MotionChannel channel) {
            return change[channel.ordinal()];
        }
    }
}
