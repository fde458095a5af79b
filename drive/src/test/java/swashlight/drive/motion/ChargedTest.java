package swashlight.drive.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.MakeUpParameter;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.steady.SteadyAnswer;
import swashlight.drive.steady.SteadyDrive;
import swashlight.drive.steady.SteadyPoint;

/** Law: a drive with a charge pump, its filter clean, clogged or nearly shut, settles where the steady view, solved another way, says. */
final class ChargedTest {
    private static final double LEAK =
            0.03; // share: ports, which the steady view leaves out, raise the pressure by a bar of forty

    @ParameterizedTest
    @CsvSource({"1, 0.5", "1, -0.3", "300, 0.5", "3000, 0.3", "3000, 0"})
    void galleryAndMakeUpMeetTheSteadyView(double clogging, double stroke) {
        DriveDescription drive = TypicalDrive.complete(
                "charged",
                true,
                Map.of(
                        MakeUpParameter.CHARGE_DISPLACEMENT, Quantity.given(2e-6),
                        MakeUpParameter.CHARGE_RELIEF, Quantity.given(1.2e6),
                        MakeUpParameter.FILTER_CLOGGING, Quantity.given(clogging)));
        MotionDuty duty = MotionDuty.driving(Timeline.constant(stroke), 0.05, 333.15);
        MotionRun run = new MovingDrive(drive).start(duty, MotionStart.SETTLED, MotionRun.USUAL_TOLERANCE);
        assertThat(run.advance(0.3)).isTrue();
        double warm = run.value(MotionChannel.OIL_TEMPERATURE);
        double[] sum = new double[3]; // time, gallery, make-up
        double[] last = {run.time()};
        run.advance(0.8, at -> {
            double length = at.time() - last[0];
            sum[0] += length;
            sum[1] += length * at.value(MotionChannel.GALLERY_PRESSURE);
            sum[2] += length * at.value(MotionChannel.MAKE_UP_FLOW);
            last[0] = at.time();
        });
        MotionDuty there = duty.change()
                .oilTemperature((warm + run.value(MotionChannel.OIL_TEMPERATURE)) / 2)
                .build();
        SteadyAnswer answer = new SteadyDrive(drive).answer(there.settledAt(0));
        SteadyPoint steady = ((SteadyAnswer.Converged) answer).point();
        assertThat(sum[2] / sum[0]).as("make-up").isCloseTo(steady.makeUpFlow(), within(LEAK * steady.makeUpFlow()));
        double gallery = steady.galleryPressure();
        assertThat(sum[1] / sum[0]).as("gallery").isCloseTo(gallery, within(0.025 * gallery + 1e3));
    }
}
