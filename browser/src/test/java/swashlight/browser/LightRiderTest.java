package swashlight.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.files.drive.DriveFiles;

/** The rider that pages begin with is the one in the room files. */
final class LightRiderTest {
    @Test
    void hasTheNumbersOfTheDemoFile() {
        DriveDescription file = DriveFiles.demo("light-rider");
        DriveDescription own = LightRider.description();
        assertThat(own.invented()).isEqualTo(file.invented());
        assertThat(own.name()).isEqualTo(file.name());
        for (Parameter parameter : Parameters.all()) {
            String key = parameter.key();
            double value = file.value(parameter);
            double spread = file.quantity(parameter).spread();
            assertThat(own.value(parameter)).as(key).isCloseTo(value, within(1e-12 * Math.abs(value)));
            assertThat(own.quantity(parameter).spread()).as(key).isCloseTo(spread, within(1e-12 * spread));
            assertThat(own.quantity(parameter).origin())
                    .as(key)
                    .isEqualTo(file.quantity(parameter).origin());
        }
    }
}
