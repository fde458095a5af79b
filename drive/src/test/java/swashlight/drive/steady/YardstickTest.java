package swashlight.drive.steady;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import swashlight.drive.description.LoopParameter;
import swashlight.drive.description.OilParameter;
import swashlight.drive.description.OutputParameter;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.loop.LinearLoop;
import swashlight.drive.oil.Oil;

/**
 * Law: with everything else taken away the whole steady view is the plainest transmission, two ideal units and one leak. What is left
 * between the two is the squeeze of the oil, bounded below.
 */
final class YardstickTest {
    private static final double TURN = 2 * Math.PI; // rad
    private static final double PUMP = 10e-6; // m³/rev
    private static final double MOTOR = 12e-6; // m³/rev
    private static final double INPUT = 314; // rad/s
    private static final double HOT = 373.15; // K
    private static final double STIFF = 3e9; // Pa

    @Property(seed = "20261125", tries = 60)
    void theWholeViewMeetsTheLinearLoop(
            @ForAll @Scale(14) @DoubleRange(min = 0.3, max = 1) double stroke,
            @ForAll @Scale(14) @DoubleRange(min = 200, max = 3000) double pull) {
        double[] vector = bareDrive();
        SteadySolver solver = new SteadySolver();
        solver.load(vector);
        Duty duty = new Duty(
                new InputState.Fixed(INPUT), stroke, HOT, new WheelState.Ground(0, pull), 0, 0, Oil.ATMOSPHERE, false);
        assertThat(solver.solve(duty)).isTrue();

        double pumpShare = Math.tan(solver.swashAngle) / Math.tan(vector[pump(UnitProperty.FULL_SWASH_ANGLE)]);
        LinearLoop loop = new LinearLoop(PUMP / TURN, MOTOR / TURN, leak(solver));
        double torque = solver.balance.motorOilTorque; // N·m
        double pressure = solver.balance.pressure[Balance.A] - solver.balance.pressure[Balance.B]; // Pa

        // torque and displacement of the motor belong together
        assertThat(pressure).isCloseTo(loop.pressure(torque), within(1e-6 * pressure));

        // speed: the loop's, less what filling the chambers against pressure and the yielding oil itself take
        double plain = loop.motorSpeed(INPUT, pumpShare, torque);
        double lost = (plain - solver.balance.motorSpeed) * MOTOR / TURN; // m³/s
        assertThat(lost).isBetween(0.0, squeeze(solver) * pressure / STIFF);
        assertThat(plain).isLessThan(loop.motorSpeed(INPUT, pumpShare, 0) * (1 - 1e-4));
    }

    /** Both units' leaks from the high side to the case and across to the low side, per pressure, m³/(s·Pa). */
    private static double leak(SteadySolver solver) {
        double conductance = 0; // m³
        for (UnitLaw unit : new UnitLaw[] {solver.balance.pump, solver.balance.motor}) {
            conductance += unit.faceConductance + unit.pistonConductance + unit.bridgeConductance;
        }
        return conductance / solver.balance.viscosity;
    }

    /** Chambers that switch from low to high pressure at their largest, both units, and the motor's flow; m³/s. */
    private static double squeeze(SteadySolver solver) {
        Balance balance = solver.balance;
        return filled(balance.pump, balance.pumpSpeed)
                + filled(balance.motor, balance.motorSpeed)
                + MOTOR / TURN * balance.motorSpeed;
    }

    private static double filled(UnitLaw unit, double speed) {
        return unit.strokers * speed / TURN * Math.max(unit.volumeZero, unit.volumePi);
    }

    /** A typical drive on oil so thin that nothing drags, in gaps so narrow that the leak stays ordinary. */
    private static double[] bareDrive() {
        Map<Parameter, Quantity> known = Map.of(
                UnitParameter.pump(UnitProperty.DISPLACEMENT), Quantity.given(PUMP),
                UnitParameter.motor(UnitProperty.DISPLACEMENT), Quantity.given(MOTOR));
        double[] vector = TypicalDrive.complete("bare", true, known).vector();
        set(vector, OilParameter.VISCOSITY40, 3e-6);
        set(vector, OilParameter.VISCOSITY100, 2e-6);
        set(vector, OilParameter.PRESSURE_VISCOSITY, 0);
        set(vector, OilParameter.BULK_MODULUS40, STIFF);
        set(vector, OilParameter.BULK_MODULUS_FADE, 0);
        set(vector, OilParameter.FREE_AIR, 0);
        set(vector, LoopParameter.CHECK_A_LEAK, 0);
        set(vector, OutputParameter.GEARS_DRAG_TORQUE, 0);
        set(vector, OutputParameter.WHEELS_TRACTION, 5);
        for (boolean motor : new boolean[] {false, true}) {
            unit(vector, motor, UnitProperty.FACE_GAP, 8e-6);
            unit(vector, motor, UnitProperty.BORE_CLEARANCE, 5e-6);
            unit(vector, motor, UnitProperty.FRICTION_COEFFICIENT, 0);
            unit(vector, motor, UnitProperty.THRUST_FRICTION, 0);
            unit(vector, motor, UnitProperty.CHURNING_COEFFICIENT, 0);
        }
        return vector;
    }

    private static int pump(UnitProperty property) {
        return UnitParameter.pump(property).index();
    }

    private static void unit(double[] vector, boolean motor, UnitProperty property, double value) {
        set(vector, motor ? UnitParameter.motor(property) : UnitParameter.pump(property), value);
    }

    private static void set(double[] vector, Parameter parameter, double value) {
        vector[parameter.index()] = value;
    }
}
