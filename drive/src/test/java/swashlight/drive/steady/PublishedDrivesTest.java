package swashlight.drive.steady;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swashlight.checks.CheckBook;
import swashlight.checks.CheckRow;
import swashlight.drive.description.InputParameter;
import swashlight.drive.description.OilParameter;
import swashlight.drive.description.OutputParameter;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.oil.Oil;

/**
 * Checks: published transmissions, answered by the whole steady view and not only by the law that speaks of them. Sources stand in the rows
 * of {@code circuit.csv} and {@code vehicle.csv}. Each tolerance is the row's, or what the bare drive still drags where that is more.
 */
final class PublishedDrivesTest {
    private static final double DRAG = 2e-3; // N·m: viscous torque left in the bare motor at 3000 rpm, measured below

    private static Stream<CheckRow> rows(String family) {
        return CheckBook.read("circuit").answered().stream()
                .filter(row -> row.family().equals(family));
    }

    static Stream<CheckRow> steadySpeeds() {
        return rows("steady-speed");
    }

    static Stream<CheckRow> steadyPressures() {
        return rows("steady-pressure");
    }

    /** With rigid oil the motor follows the ratio of the displacements, loaded or not, but for the little that the tight drive leaks. */
    @Test
    void theRatioIsThatOfTheDisplacements() {
        Rig tight = BareDrive.of(7e-6, 12e-6)
                .with(OilParameter.VISCOSITY_FACTOR, 1)
                .with(OilParameter.VISCOSITY40, 5e-5)
                .with(OilParameter.VISCOSITY100, 1e-5);
        for (double stroke : new double[] {-0.5, 0.25, 1}) {
            double leak = BareDrive.leak(tight, stroke) * 2 * Math.PI / 12e-6; // rad/s per Pa
            for (double torque : new double[] {0, 5, 20}) {
                Duty duty = lifted(300).withStroke(stroke);
                double slipped = BareDrive.rigid(loaded(tight, torque), rig -> {
                    SteadyPoint point = rig.at(duty);
                    return leak * (point.pressureA() - point.pressureB());
                });
                double speed = BareDrive.rigid(
                        loaded(tight, torque), rig -> rig.at(duty).motorSpeed());
                double reach = stroke < 0 ? tight.get(InputParameter.CONTROL_REVERSE_SHARE) : 1;
                double full = tight.get(UnitParameter.pump(UnitProperty.FULL_SWASH_ANGLE));
                double ideal = 300 * Math.tan(stroke * reach * full) / Math.tan(full) * 7.0 / 12;
                assertThat(speed + slipped).isCloseTo(ideal, withinPercentage(1e-4));
                assertThat(Math.abs(slipped)).isLessThan(1e-4 * Math.abs(ideal));
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("steadySpeeds")
    void speedWithOneLeak(CheckRow row) {
        double speed = oneLeak(row, SteadyPoint::motorSpeed);
        double dragged = row.si("Ct") * DRAG * square(2 * Math.PI / row.si("Vm")); // rad/s
        assertThat(speed).as(row.verdict(speed)).isCloseTo(row.expected(), within(row.tolerance() + dragged));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("steadyPressures")
    void pressureWithOneLeak(CheckRow row) {
        double pressure = oneLeak(row, point -> point.pressureA() - point.pressureB());
        double dragged = DRAG * 2 * Math.PI / row.si("Vm"); // Pa
        assertThat(pressure).as(row.verdict(pressure)).isCloseTo(row.expected(), within(row.tolerance() + dragged));
    }

    @Test
    void whatTheBareDriveStillDragsIsSmall() {
        Rig rig = BareDrive.leaking(BareDrive.of(10e-6, 10e-6), 2e-12, 1);
        assertThat(BareDrive.leak(rig, 1)).isCloseTo(2e-12, withinPercentage(1e-6));
        SteadyPoint idle = rig.at(lifted(314.16));
        assertThat(Math.abs((idle.pressureA() - idle.pressureB()) * 10e-6 / (2 * Math.PI)))
                .isLessThan(DRAG);
    }

    @Test
    void stallPressureWithoutRelief() {
        CheckRow row = CheckBook.read("circuit").row("stall-pressure/0.05").orElseThrow();
        double small = row.si("Vp") / 10; // a pump that carries the row's share at half stroke: less oil to squeeze
        Rig tight = BareDrive.of(small, row.si("Vp"));
        double full = tight.get(UnitParameter.pump(UnitProperty.FULL_SWASH_ANGLE));
        double stroke = Math.atan(10 * row.si("x") * Math.tan(full)) / full;
        Rig rig = BareDrive.leaking(tight, row.si("Ct"), stroke);
        Duty duty = lifted(row.si("n")).withStroke(stroke).with(new WheelState.Held());
        double pressure = BareDrive.rigid(rig, stiff -> {
            SteadyPoint point = stiff.at(duty);
            return point.pressureA() - point.pressureB();
        });
        assertThat(pressure).as(row.verdict(pressure)).isCloseTo(row.expected(), withinPercentage(0.1));
    }

    @Test
    void theWorkedClimb() {
        CheckBook book = CheckBook.read("circuit");
        CheckRow row = book.row("worked-climb-pressure/250kg").orElseThrow();
        double weight = row.si("m") * row.si("g");
        double displacement = row.si("V");
        Rig rig = BareDrive.of(displacement, displacement)
                .with(OutputParameter.MACHINE_MASS, weight / LoadLaw.GRAVITY)
                .with(OutputParameter.WHEELS_ROLLING_RESISTANCE, row.si("f"))
                .with(OutputParameter.WHEELS_ROLLING_RADIUS, row.si("r"))
                .with(OutputParameter.WHEELS_TRACTION, 1.2)
                .with(OutputParameter.WHEELS_LOAD_SHARE, 1)
                .with(OutputParameter.GEARS_RATIO, row.si("i"))
                .with(OutputParameter.GEARS_MESH_EFFICIENCY, row.si("gear"))
                .with(UnitParameter.motor(UnitProperty.FRICTION_COEFFICIENT), friction(1 - row.si("mhm")));
        Duty climb = Duty.driving(1, BareDrive.WARM, Math.atan(row.si("grade"))).with(new InputState.Fixed(240));
        SteadyPoint point = rig.at(climb);
        double pressure = point.pressureA() - point.pressureB();
        book.row("worked-climb-force/250kg").orElseThrow().assertAgrees(point.groundForce());
        book.row("worked-climb-wheel-torque/250kg").orElseThrow().assertAgrees(point.axleTorque());
        book.row("worked-climb-motor-torque/250kg").orElseThrow().assertAgrees(point.motorTorque());
        assertThat(pressure).as(row.verdict(pressure)).isCloseTo(row.expected(), within(0.04e5));
        double perSpeed =
                row.si("v") / (point.groundSpeed() / (1 - point.wheelSlip())); // to the row's speed, without slip
        CheckRow wheel = book.row("worked-climb-wheel-speed/250kg").orElseThrow();
        wheel.assertAgrees(point.axleSpeed() * perSpeed);
        CheckRow motor = book.row("worked-climb-motor-speed/250kg").orElseThrow();
        motor.assertAgrees(point.motorSpeed() * perSpeed);
        CheckRow flow = book.row("worked-climb-flow/250kg").orElseThrow();
        flow.assertAgrees(Math.abs(point.intoA(LedgerItem.MOTOR_CARRY)) * perSpeed);
    }

    /** Belt and engine together: loaded until the belt slips by as much as the row says. */
    @Test
    void aBeltThatSlips() {
        CheckRow row = CheckBook.read("vehicle").row("belt-slip/90-150").orElseThrow();
        Rig rig = Rig.typical()
                .with(InputParameter.ENGINE_NO_LOAD_SPEED, row.si("n"))
                .with(InputParameter.BELT_SPEED_RATIO, row.si("d1") / row.si("d2"))
                .with(InputParameter.BELT_CAPACITY, 12)
                .with(InputParameter.BELT_CREEP, 0.015);
        double light = 0;
        double heavy = 1500; // N
        for (int i = 0; i < 60; i++) {
            double pull = (light + heavy) / 2;
            boolean more = pulling(rig, pull).beltSlip() < row.si("slip");
            light = more ? pull : light;
            heavy = more ? heavy : pull;
        }
        SteadyPoint point = pulling(rig, light);
        assertThat(point.beltSlip()).isCloseTo(row.si("slip"), within(1e-9));
        row.assertAgrees(point.pumpSpeed() * row.si("n") / point.engineSpeed());
    }

    private static SteadyPoint pulling(Rig rig, double pull) {
        return rig.at(Duty.driving(1, BareDrive.WARM, 0).with(new WheelState.Ground(0, pull)));
    }

    private static double oneLeak(CheckRow row, Function<SteadyPoint, Double> answer) {
        Rig rig = BareDrive.leaking(BareDrive.of(row.si("Vp"), row.si("Vm")), row.si("Ct"), 1);
        return BareDrive.rigid(loaded(rig, row.si("T")), stiff -> answer.apply(stiff.at(lifted(row.si("n")))));
    }

    /** A torque (N·m) that holds the motor back, by way of a dragging brake on a straight axle. */
    private static Rig loaded(Rig rig, double torque) {
        return rig.with(OutputParameter.GEARS_RATIO, 1).with(OutputParameter.BRAKE_DRAG_TORQUE, torque);
    }

    private static Duty lifted(double inputSpeed) {
        return new Duty(
                new InputState.Fixed(inputSpeed),
                1,
                BareDrive.WARM,
                new WheelState.Lifted(),
                0,
                0,
                Oil.ATMOSPHERE,
                false);
    }

    /** Friction coefficient that takes a share of a motor's torque: f (N/2) A R sin α = share N A R tan α/π. */
    private static double friction(double share) {
        double angle = Rig.typical().get(UnitParameter.motor(UnitProperty.FULL_SWASH_ANGLE));
        return 2 * share / (Math.PI * Math.cos(angle));
    }

    private static double square(double x) {
        return x * x;
    }
}
