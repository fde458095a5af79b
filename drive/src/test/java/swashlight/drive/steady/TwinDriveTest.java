package swashlight.drive.steady;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.InputParameter;
import swashlight.drive.description.OutputParameter;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;

/** Two sides on one engine must see one engine. */
class TwinDriveTest {
    private final DriveDescription side =
            TypicalDrive.complete("side", true, Map.of(OutputParameter.MACHINE_MASS, Quantity.given(250)));

    @Test
    void bothSidesSeeTheSameEngineSpeed() {
        Duty fast = Duty.driving(1, 333.15, 0.1);
        Duty slow = Duty.driving(0.4, 333.15, 0.1);
        TwinDrive.Settled pair = new TwinDrive(side, side).answer(fast, slow).orElseThrow();
        assertThat(pair.left().engineSpeed()).isCloseTo(pair.right().engineSpeed(), within(1e-6));
        assertThat(pair.left().groundSpeed()).isGreaterThan(pair.right().groundSpeed());
    }

    @Test
    void theOtherSideDroopsTheEngine() {
        Duty duty = Duty.driving(1, 333.15, 0.15);
        double alone = new SteadyDrive(side).answer(duty).point().engineSpeed();
        double paired = new TwinDrive(side, side)
                .answer(duty, duty)
                .orElseThrow()
                .left()
                .engineSpeed();
        double otherTorque = new SteadyDrive(side).answer(duty).point().pumpTorque();
        double perTorque = side.value(InputParameter.ENGINE_NO_LOAD_SPEED)
                * side.value(InputParameter.ENGINE_DROOP)
                / side.value(InputParameter.ENGINE_RATED_TORQUE);
        assertThat(alone - paired).isCloseTo(perTorque * otherTorque, within(0.05 * perTorque * otherTorque));
    }
}
