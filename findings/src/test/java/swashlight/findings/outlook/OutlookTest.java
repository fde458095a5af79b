package swashlight.findings.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.TypicalDrive;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Causes;
import swashlight.findings.expect.Expectation;
import swashlight.findings.expect.Expected;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.Setup;
import swashlight.findings.reading.SetupDraft;

/** Laws of an outlook: its middle is the described machine's, its ends are in order, and a fault moves it the way it must. */
final class OutlookTest {
    private static final DriveDescription DRIVE = TypicalDrive.complete("typical", true, Map.of());
    private static final Cause SOUND = Causes.find(Cause.HEALTHY).orElseThrow();

    @Test
    void theMiddleIsTheDescribedMachine() {
        Setup setup = setup(20);
        Outlook outlook = Outlook.of(DRIVE, SOUND, new double[0], asked(setup), 2000, 1);
        Expected as = Expectation.of(DRIVE, ReadingKind.RUN_TIME, setup).expected();
        double described = ((Expected.Value) as).value();
        assertThat(value(outlook.middle())).isCloseTo(described, within(0.02 * described));
        assertThat(value(outlook.low())).isLessThan(value(outlook.middle()));
        assertThat(value(outlook.high())).isGreaterThan(value(outlook.middle()));
    }

    @Test
    void sharesOfSourcesAreShares() {
        Outlook outlook = Outlook.of(DRIVE, SOUND, new double[0], asked(setup(20)), 2000, 1);
        double sum =
                outlook.sources().stream().mapToDouble(Outlook.Source::share).sum();
        assertThat(sum).isBetween(0.3, 1.1);
    }

    @Test
    void aShortStrokeTakesLonger() {
        Cause fault = Causes.find("forward-travel-short").orElseThrow();
        Reading asked = asked(setup(20));
        Outlook sound = Outlook.of(DRIVE, SOUND, new double[0], asked, 400, 1);
        Outlook sick = Outlook.of(DRIVE, fault, new double[] {0.3}, asked, 400, 1);
        assertThat(value(sick.low())).isGreaterThan(value(sound.high()));
    }

    private static double value(Expected expected) {
        return ((Expected.Value) expected).value();
    }

    private static Reading asked(Setup setup) {
        return new Reading("run", ReadingKind.RUN_TIME, 1, OptionalDouble.empty(), setup);
    }

    private static Setup setup(double distance) {
        return new SetupDraft()
                .stroke(1)
                .fullThrottle()
                .oil(343)
                .slope(0)
                .distance(distance)
                .done();
    }
}
