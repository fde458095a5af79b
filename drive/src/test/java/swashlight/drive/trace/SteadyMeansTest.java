package swashlight.drive.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Origin;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Place;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionDuty;
import swashlight.drive.motion.MotionRun;
import swashlight.drive.motion.MotionStart;
import swashlight.drive.motion.MovingDrive;
import swashlight.drive.motion.Timeline;
import swashlight.drive.steady.SteadyAnswer;
import swashlight.drive.steady.SteadyDrive;
import swashlight.drive.steady.SteadyPoint;

/**
 * Law: means over whole turns meet the steady view, solved another way, on random duties of four drives with 5 to 9 pistons; seeds 0 … 23.
 *
 * <p>The steady view lets oil through the ports for nothing. The moving view does not: its ports are orifices, and the pressure they cost
 * is foretold here in closed form and laid on top. It is 0.05 to 0.2 bar at working speeds, so that it only shows at small loads.
 */
final class SteadyMeansTest {
    private static final MotionChannel[] CHANNELS = {
        MotionChannel.PRESSURE_A,
        MotionChannel.PRESSURE_B,
        MotionChannel.GROUND_SPEED,
        MotionChannel.MOTOR_SPEED,
        MotionChannel.PUMP_SPEED,
        MotionChannel.INPUT_TORQUE,
        MotionChannel.MAKE_UP_FLOW,
        MotionChannel.GROUND_FORCE
    };
    private static final double SHARE = 0.01; // of each quantity's size
    private static final double SMALL_PRESSURE = 5e3; // Pa: the ports' loss is foretold that well
    private static final double SMALL_TORQUE = 5e-3; // N·m

    private static final List<DriveDescription> DRIVES =
            List.of(Turning.DRIVE, sized(7, 1, 1.5), sized(9, 2, 2.5), sized(8, 0.7, 1));
    private DriveDescription drive;

    /** A usual drive with so many pistons on each side and displacements so many times the usual ones. */
    private static DriveDescription sized(int pistons, double pump, double motor) {
        Map<Parameter, Quantity> known = new HashMap<>();
        known.put(UnitParameter.pump(UnitProperty.PISTON_COUNT), new Quantity(pistons, 0, Origin.GIVEN));
        known.put(UnitParameter.motor(UnitProperty.PISTON_COUNT), new Quantity(pistons, 0, Origin.GIVEN));
        known.put(UnitParameter.pump(UnitProperty.DISPLACEMENT), new Quantity(7e-6 * pump, 0, Origin.GIVEN));
        known.put(UnitParameter.motor(UnitProperty.DISPLACEMENT), new Quantity(10e-6 * motor, 0, Origin.GIVEN));
        return TypicalDrive.complete("any", true, known);
    }

    static IntStream seeds() {
        return IntStream.range(0, 24);
    }

    private static MotionDuty duty(Random random) {
        double stroke = (random.nextBoolean() ? 1 : -1) * (0.1 + 0.9 * random.nextDouble());
        double slope = -0.15 + 0.35 * random.nextDouble(); // rad
        double oil = 293 + 75 * random.nextDouble(); // K
        double throttle = 0.4 + 0.6 * random.nextDouble();
        double pull = random.nextBoolean() ? 0 : 600 * random.nextDouble(); // N
        return MotionDuty.driving(Timeline.constant(stroke), slope, oil)
                .change()
                .throttle(Timeline.constant(throttle))
                .pull(Timeline.constant(pull))
                .build();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void meansMeetTheSteadyView(int seed) {
        drive = DRIVES.get(seed % DRIVES.size());
        MotionDuty duty = duty(new Random(seed));
        MotionRun run = new MovingDrive(drive).start(duty, MotionStart.SETTLED, MotionRun.USUAL_TOLERANCE);
        assertThat(run.advance(1.5)).isTrue();
        double warm = run.value(MotionChannel.OIL_TEMPERATURE);
        CycleMeter meter = new CycleMeter(run, Signal.all(CHANNELS), Pace.MOTOR_SHAFT, 2 * Math.PI);
        assertThat(run.advance(3, meter)).isTrue();
        double between = (warm + run.value(MotionChannel.OIL_TEMPERATURE)) / 2;
        MotionDuty there = duty.change().oilTemperature(between).build();
        SteadyPoint steady = ((SteadyAnswer.Converged) new SteadyDrive(drive).answer(there.settledAt(0))).point();

        double way = Math.signum(mean(meter, 3));
        double motorLoss = portLoss(Place.MOTOR, mean(meter, 3), motorSwash());
        double pumpLoss = portLoss(Place.PUMP, mean(meter, 4), run.value(MotionChannel.SWASH_ANGLE));
        double reach = reach(Place.PUMP, run.value(MotionChannel.SWASH_ANGLE));

        double difference = steady.pressureA() - steady.pressureB();
        assertThat(mean(meter, 0) - mean(meter, 1))
                .as("pressure difference")
                .isCloseTo(difference + way * motorLoss, within(SHARE * Math.abs(difference) + SMALL_PRESSURE));
        double torque = steady.pumpTorque();
        assertThat(mean(meter, 5))
                .as("input torque")
                .isCloseTo(torque + reach * (motorLoss + pumpLoss), within(SHARE * Math.abs(torque) + SMALL_TORQUE));
        assertThat(mean(meter, 3))
                .as("motor speed")
                .isCloseTo(steady.motorSpeed(), within(SHARE * Math.abs(mean(meter, 3))));
        assertThat(mean(meter, 4)).as("input speed").isCloseTo(steady.pumpSpeed(), within(SHARE * mean(meter, 4)));
        double force = steady.groundForce();
        assertThat(mean(meter, 7)).as("force on the ground").isCloseTo(force, within(SHARE * Math.abs(force) + 0.5));
        if (Math.abs(steady.groundSpeed()) > 0.3) { // slip is rounded near standstill
            assertThat(mean(meter, 2)).isCloseTo(steady.groundSpeed(), within(SHARE * Math.abs(steady.groundSpeed())));
        }
        double more = Math.abs(difference) > 1e6 ? 2 * motorLoss / Math.abs(difference) : 1; // leak grows with pressure
        assertThat(mean(meter, 6))
                .as("make-up flow")
                .isCloseTo(steady.makeUpFlow(), within((SHARE + more) * steady.makeUpFlow()));
    }

    private static double mean(CycleMeter meter, int signal) {
        return meter.cycles().last(signal, Integer.MAX_VALUE).mean();
    }

    private double motorSwash() {
        return drive.value(new UnitParameter(Place.MOTOR, UnitProperty.FULL_SWASH_ANGLE));
    }

    /** Torque over pressure of a unit whose loss torque resists, m³/rad. */
    private double reach(Place place, double swash) {
        return get(place, UnitProperty.PISTON_COUNT) * piston(place) * Math.abs(Math.tan(swash)) / Math.PI;
    }

    private double piston(Place place) {
        double bore = get(place, UnitProperty.PISTON_DIAMETER);
        return Math.PI * bore * bore / 4 * get(place, UnitProperty.PITCH_RADIUS);
    }

    private double get(Place place, UnitProperty property) {
        return drive.value(new UnitParameter(place, property));
    }

    /**
     * What in and out port of a unit cost together, as a pressure on its shaft: Δp of the sharp orifice at the flow of each piston
     * position, weighed with the piston's lever; closed form but for the sum, textbook.
     */
    private double portLoss(Place place, double speed, double swash) {
        double overlap = get(place, UnitProperty.PORT_OVERLAP);
        double ramp = get(place, UnitProperty.PORT_RAMP);
        double density = 870; // kg/m³, near enough: it sways by 3 %
        double lost = 0;
        double weight = 0;
        int parts = 2000;
        for (int i = 0; i < parts; i++) {
            double phi = Math.PI * (i + 0.5) / parts;
            double area = get(place, UnitProperty.PORT_AREA)
                    * smooth((phi - overlap) / ramp + 0.5)
                    * smooth((Math.PI - overlap - phi) / ramp + 0.5);
            double flow = piston(place) * Math.abs(Math.tan(swash) * speed) * Math.sin(phi); // m³/s
            weight += Math.sin(phi);
            if (area > 0.01 * get(place, UnitProperty.PORT_AREA)) {
                lost += Math.sin(phi) * difference(flow / (0.65 * area * Math.sqrt(2 / density)));
            }
        }
        return 2 * lost / weight;
    }

    /** Δp with Δp / (Δp² + Δp_t²)^¼ = q, that is Δp² = (q⁴ + q² √(q⁴ + 4 Δp_t²)) / 2. */
    private static double difference(double q) {
        double q2 = q * q;
        double transition = 2e4; // Pa
        return Math.sqrt((q2 * q2 + q2 * Math.sqrt(q2 * q2 + 4 * transition * transition)) / 2);
    }

    private static double smooth(double u) {
        return u <= 0 ? 0 : u >= 1 ? 1 : u * u * (3 - 2 * u);
    }
}
