package swashlight.drive.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.HeatParameter;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.InputState;
import swashlight.drive.steady.WheelState;

/** Laws of a drive that warms itself, against the plainest warm-up; jqwik prints the fixed seed with any failure. */
final class HeatedDriveTest {
    private static final String SEED = "20261125";
    private static final double AIR = 293.15; // K
    private static final DriveDescription DRIVE = TypicalDrive.complete(
            "test drive", true, Map.of(UnitParameter.pump(UnitProperty.DISPLACEMENT), Quantity.given(7e-6)));

    /** Parked, it makes no heat: the whole view must follow the lump's exponential. */
    @Property(seed = SEED, tries = 20)
    void aParkedDriveCoolsLikeALump(
            @ForAll @Scale(14) @DoubleRange(min = 260, max = 400) double start,
            @ForAll @Scale(14) @DoubleRange(min = 60, max = 7200) double duration) {
        Duty parked = Duty.driving(0, start, 0).with(new InputState.Off()).with(new WheelState.Held());
        WarmUp course = new HeatedDrive(DRIVE).follow(parked, AIR, duration);
        assertThat(course).isInstanceOf(WarmUp.Followed.class);
        HeatLump lump = new HeatLump(
                DRIVE.value(HeatParameter.CAPACITY),
                DRIVE.value(HeatParameter.CONDUCTANCE_STILL) * DRIVE.value(HeatParameter.FIN_SHARE));
        for (WarmPoint moment : course.points()) {
            assertThat(moment.heat()).isCloseTo(0, within(1e-6));
            assertThat(moment.temperature() - AIR).isCloseTo(lump.rise(start - AIR, 0, moment.time()), within(0.3));
        }
    }

    /** Where it settles, heat made is heat given away. */
    @Property(seed = SEED, tries = 10)
    void itSettlesWhereHeatMadeIsHeatGivenAway(@ForAll @Scale(14) @DoubleRange(min = 0, max = 0.15) double slope) {
        Duty climbing = Duty.driving(0.7, 320, slope);
        SettledTemperature settled = new HeatedDrive(DRIVE).settle(climbing, AIR);
        assertThat(settled).isInstanceOf(SettledTemperature.Settled.class);
        double temperature = ((SettledTemperature.Settled) settled).temperature();
        WarmPoint there = new HeatedDrive(DRIVE)
                .follow(climbing.withOilTemperature(temperature), AIR, 1)
                .points()
                .get(0);
        double most = DRIVE.value(HeatParameter.CONDUCTANCE_FAN) * (temperature - AIR);
        double least = DRIVE.value(HeatParameter.CONDUCTANCE_STILL) * (temperature - AIR);
        assertThat(there.heat()).isBetween(least, most * (1 + 1e-9));
        assertThat(new HeatedDrive(DRIVE)
                        .follow(climbing.withOilTemperature(temperature), AIR, 600)
                        .points())
                .allSatisfy(moment -> assertThat(moment.temperature()).isCloseTo(temperature, within(0.1)));
    }
}
