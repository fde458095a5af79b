package swashlight.drive.motion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.TypicalDrive;

/** Law: the method is of second order, so that halving the step quarters what is wrong (Alexander 1977; definition of order). */
final class OrderTest {
    private static final DriveDescription DRIVE = TypicalDrive.complete("any", true, Map.of());
    private static final MotionDuty DUTY =
            MotionDuty.driving(Timeline.through(new double[] {0, 0.02}, new double[] {0.4, 0.6}), 0.05, 333.15);
    private static final double UNTIL = 0.02; // s
    private static final int LEAST = 1000; // steps
    private static final int FINEST = 32_000; // steps

    private static final MotionChannel[] SEEN = {
        MotionChannel.PUMP_ANGLE, MotionChannel.MOTOR_ANGLE, MotionChannel.MOTOR_SPEED, MotionChannel.GROUND_SPEED
    };

    private static double[] after(int steps) {
        MotionRun run = new MovingDrive(DRIVE).start(DUTY, MotionStart.SETTLED, 1e-6);
        for (int i = 0; i < steps; i++) {
            run.step(UNTIL / steps);
        }
        assertThat(run.rejected()).isZero();
        double[] seen = new double[SEEN.length];
        for (int i = 0; i < seen.length; i++) {
            seen[i] = run.value(SEEN[i]);
        }
        return seen;
    }

    @Test
    void halfTheStepQuartersTheError() {
        double[] exact = after(FINEST);
        double[] coarse = after(LEAST);
        double[] fine = after(4 * LEAST);
        for (int i = 0; i < exact.length; i++) {
            double halvings = Math.log(Math.abs((coarse[i] - exact[i]) / (fine[i] - exact[i]))) / Math.log(4);
            assertThat(halvings).as(SEEN[i].name()).isGreaterThan(1.7);
        }
    }
}
