package swashlight.drive.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.OilParameter;
import swashlight.drive.description.Origin;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Place;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.motion.Chambers;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionDuty;
import swashlight.drive.motion.MotionRun;
import swashlight.drive.motion.MotionStart;
import swashlight.drive.motion.MotionWatcher;
import swashlight.drive.motion.MovingDrive;
import swashlight.drive.motion.PortZone;
import swashlight.drive.motion.Timeline;
import swashlight.drive.steady.InputState;

/**
 * Port timing and air, held against what is published.
 *
 * <p>Sources, as far as seen: "The Effect of Oil Entrapment in an Axial Piston Pump", J. Dyn. Sys. Meas. Control 107 (1985) 246, abstract
 * (pressure by entrapment against swash angle, discharge pressure and entrapment angle). "The Pumping Dynamics of Swash Plate Piston
 * Pumps", J. Dyn. Sys. Meas. Control 111 (1989) 307, abstract (relief grooves against cylinder pressure and flow ripple). A thesis of 31 May
 * 2018, scribd.com/document/724218024, abstract (line-to-line porting against a trapping plate: smoother chamber pressure, no peaks, less
 * torque on the swash plate). The mixture of oil and air: Merritt, Hydraulic Control Systems, 1967, ch. 1, form with masses kept.
 */
final class PortTimingTest {
    private static final double RAMP = 0.12; // rad
    private static final double ATMOSPHERE = 101_325; // Pa
    private static final double SPEED = 300; // rad/s

    /** What one pump chamber went through, the means over some turns. */
    private record Trapped(double closedPressure, double closedVolume, double peakPressure, double leastVolume) {}

    /**
     * Check: oil shut in at the dead centre is squeezed as the law of the mixture says, V₂/V₁ = v(p₂)/v(p₁), for every swash angle, angle of
     * entrapment and share of air.
     */
    @ParameterizedTest
    @CsvSource({
        "0.5, 0.10, 0.005",
        "1.0, 0.10, 0.005",
        "0.5, 0.20, 0.005",
        "1.0, 0.20, 0.005",
        "0.7, 0.20, 0.0",
        "0.7, 0.20, 0.02",
        "0.7, 0.20, 0.08"
    })
    void trappedOilIsSqueezedByTheLaw(double stroke, double angle, double air) {
        Trapped trapped = trapped(tight(angle, air), stroke);
        double squeezed = trapped.leastVolume() / trapped.closedVolume();
        assertThat(squeezed).isLessThan(0.9995);
        double rise = trapped.peakPressure() - trapped.closedPressure();
        double lawRise = peak(trapped.closedPressure(), squeezed, air) - trapped.closedPressure();
        assertThat(rise).as("the rest leaks past the piston").isCloseTo(lawRise, within(0.03 * lawRise));
    }

    /** Trend of 1985: more swash and more entrapment make the trapped pressure larger; of Merritt: air makes it softer. */
    @Test
    void trappedPressureGrowsWithSwashAndAngleAndShrinksWithAir() {
        double usual = rise(tight(0.15, 0.005), 0.6);
        assertThat(rise(tight(0.15, 0.005), 0.9)).isGreaterThan(1.2 * usual);
        assertThat(rise(tight(0.22, 0.005), 0.6)).isGreaterThan(1.5 * usual);
        assertThat(rise(tight(0.15, 0.05), 0.6)).isLessThan(0.97 * usual);
        assertThat(rise(tight(0.15, 0.15), 0.6)).isLessThan(0.9 * usual);
    }

    /** Trend of 2018: line to line instead of trapping takes the peaks off the chambers and the swash plate. */
    @Test
    void lineToLinePortingIsSmoother() {
        Look trapping = look(drive(Map.of(pump(UnitProperty.PORT_OVERLAP), RAMP / 2 + 0.15)));
        Look line = look(drive(Map.of(pump(UnitProperty.PORT_OVERLAP), RAMP / 2)));
        assertThat(line.peak()).as("chamber above its side, Pa").isLessThan(0.2 * trapping.peak());
        assertThat(line.torqueRipple()).isLessThan(trapping.torqueRipple());
        assertThat(line.momentRipple()).isLessThan(trapping.momentRipple());
    }

    /** Trend of 1989: a relief groove lowers the peak of a trapping plate, a longer one more. */
    @Test
    void reliefGroovesTakeThePeakOff() {
        double bare = look(grooved(0)).peak();
        double shallow = look(grooved(0.1)).peak();
        double longer = look(grooved(0.25)).peak();
        assertThat(shallow).isLessThan(0.95 * bare);
        assertThat(longer).isLessThan(0.8 * shallow);
    }

    private record Look(double peak, double torqueRipple, double momentRipple) {}

    private static Look look(DriveDescription drive) {
        MotionRun run = run(drive, 0.8);
        List<Signal> signals = Signal.all(MotionChannel.PUMP_TORQUE, MotionChannel.SWASH_MOMENT);
        CycleMeter meter = new CycleMeter(run, signals, Pace.PUMP_SHAFT, 2 * Math.PI);
        double[] peak = {0};
        run.advance(0.6, MotionWatcher.all(meter, at -> {
            double side = Math.max(at.value(MotionChannel.PRESSURE_A), at.value(MotionChannel.PRESSURE_B));
            peak[0] = Math.max(peak[0], at.chambers(Place.PUMP).pressure(0) - side);
        }));
        return new Look(
                peak[0],
                meter.cycles().last(0, 4).ripple(),
                meter.cycles().last(1, 4).ripple());
    }

    private static double rise(DriveDescription drive, double stroke) {
        Trapped trapped = trapped(drive, stroke);
        return trapped.peakPressure() - trapped.closedPressure();
    }

    private static Trapped trapped(DriveDescription drive, double stroke) {
        MotionRun run = run(drive, stroke);
        double[] sums = new double[4];
        double[] pass = new double[5]; // closed pressure and volume, peak and its volume, closed or not
        int[] count = {0};
        run.advance(0.7, at -> {
            Chambers pump = at.chambers(Place.PUMP);
            boolean closed = pump.zone(0) == PortZone.SMALLEST;
            if (closed && pass[4] == 0) {
                pass[0] = pump.pressure(0);
                pass[1] = pump.volume(0);
                pass[3] = Double.POSITIVE_INFINITY;
            }
            if (closed && pump.volume(0) < pass[3]) {
                pass[2] = pump.pressure(0);
                pass[3] = pump.volume(0);
            }
            if (!closed && pass[4] == 1) {
                count[0]++;
                for (int i = 0; i < 4; i++) {
                    sums[i] += pass[i];
                }
            }
            pass[4] = closed ? 1 : 0;
        });
        assertThat(count[0]).as("passes").isGreaterThan(5);
        return new Trapped(sums[0] / count[0], sums[1] / count[0], sums[2] / count[0], sums[3] / count[0]);
    }

    /** Runs until it has settled: 0.5 s. */
    private static MotionRun run(DriveDescription drive, double stroke) {
        MotionDuty duty =
                MotionDuty.driving(Timeline.constant(stroke), 0.1, 313.15).with(new InputState.Fixed(SPEED));
        MotionRun run = new MovingDrive(drive).start(duty, MotionStart.SETTLED, 2e-4);
        assertThat(run.advance(0.5)).isTrue();
        return run;
    }

    private static DriveDescription tight(double angle, double air) {
        return drive(Map.of(
                pump(UnitProperty.PORT_OVERLAP),
                RAMP / 2 + angle,
                pump(UnitProperty.BORE_CLEARANCE),
                2e-6,
                OilParameter.FREE_AIR,
                air));
    }

    private static DriveDescription grooved(double groove) {
        return drive(Map.of(
                pump(UnitProperty.PORT_OVERLAP),
                RAMP / 2 + 0.15,
                pump(UnitProperty.GROOVE_AREA),
                1e-6,
                pump(UnitProperty.GROOVE_ANGLE),
                groove));
    }

    private static UnitParameter pump(UnitProperty property) {
        return UnitParameter.pump(property);
    }

    private static DriveDescription drive(Map<? extends Parameter, Double> values) {
        Map<Parameter, Quantity> changes = new HashMap<>();
        values.forEach((parameter, value) -> changes.put(parameter, new Quantity(value, 0, Origin.GIVEN)));
        return Turning.DRIVE.with(changes);
    }

    /** Pressure to which oil with air must be squeezed from another pressure (Pa) into a share of its room, by halving, Pa. */
    private static double peak(double from, double share, double air) {
        double wanted = share * room(from, air);
        double low = from;
        double high = 5e8;
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            if (room(middle, air) > wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Room that oil with so much air at one atmosphere takes at a pressure (Pa), over its room at one atmosphere; oil at 40 °C. */
    private static double room(double pressure, double air) {
        double modulus = Turning.DRIVE.value(OilParameter.BULK_MODULUS40);
        double slope = Turning.DRIVE.value(OilParameter.BULK_MODULUS_SLOPE);
        double liquid = Math.pow((modulus + slope * pressure) / (modulus + slope * ATMOSPHERE), -1 / slope);
        double gas = Math.pow(ATMOSPHERE / pressure, 1 / Turning.DRIVE.value(OilParameter.AIR_EXPONENT));
        return (1 - air) * liquid + air * gas;
    }
}
