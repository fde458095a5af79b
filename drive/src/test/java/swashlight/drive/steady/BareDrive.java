package swashlight.drive.steady;

import java.util.Map;
import java.util.function.Function;
import swashlight.drive.description.InputParameter;
import swashlight.drive.description.LoopParameter;
import swashlight.drive.description.MakeUpParameter;
import swashlight.drive.description.OilParameter;
import swashlight.drive.description.OutputParameter;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.oil.Oil;

/**
 * A drive with everything taken away but displacements, one laminar leak and what a test puts back: no friction, no drag to speak of, no
 * dead band, no seat leaks, air-free oil. What the oil's squeeze still takes is taken out by solving at three bulk moduli and going on to the
 * rigid limit.
 */
final class BareDrive {
    static final double WARM = Oil.COOL_REFERENCE; // K
    private static final double STIFF = 3e9; // Pa
    private static final double CHAMBER_FILL = 3; // mid chamber over half stroke volume of a typical unit, 1
    private static final double TIGHT = 1e-6; // m

    private BareDrive() {}

    /** Pump and motor of given displacements (m³/rev), as tight as the laws allow. */
    static Rig of(double pump, double motor) {
        double[] vector = TypicalDrive.complete(
                        "bare",
                        true,
                        Map.of(
                                UnitParameter.pump(UnitProperty.DISPLACEMENT), Quantity.given(pump),
                                UnitParameter.motor(UnitProperty.DISPLACEMENT), Quantity.given(motor)))
                .vector();
        Rig rig = Rig.of(vector)
                .with(OilParameter.VISCOSITY40, 3e-6)
                .with(OilParameter.VISCOSITY100, 2e-6)
                .with(OilParameter.VISCOSITY_FACTOR, 0.1)
                .with(OilParameter.PRESSURE_VISCOSITY, 0)
                .with(OilParameter.BULK_MODULUS40, STIFF)
                .with(OilParameter.BULK_MODULUS_SLOPE, 2)
                .with(OilParameter.FREE_AIR, 0)
                .with(LoopParameter.CHECK_A_LEAK, 0)
                .with(LoopParameter.CHECK_B_LEAK, 0)
                .with(MakeUpParameter.FILTER_RESISTANCE, 1e4)
                .with(InputParameter.CONTROL_PLAY, 0)
                .with(OutputParameter.GEARS_MESH_EFFICIENCY, 1)
                .with(OutputParameter.GEARS_DRAG_TORQUE, 0);
        for (UnitProperty gap : new UnitProperty[] {UnitProperty.BORE_CLEARANCE, UnitProperty.FACE_GAP}) {
            rig = rig.with(UnitParameter.pump(gap), TIGHT).with(UnitParameter.motor(gap), TIGHT);
        }
        for (UnitProperty none : new UnitProperty[] {
            UnitProperty.FRICTION_COEFFICIENT, UnitProperty.THRUST_FRICTION, UnitProperty.CHURNING_COEFFICIENT
        }) {
            rig = rig.with(UnitParameter.pump(none), 0).with(UnitParameter.motor(none), 0);
        }
        return small(small(rig, UnitParameter::pump), UnitParameter::motor);
    }

    /** A face so small that it neither leaks nor drags, chambers that empty at full stroke. */
    private static Rig small(Rig rig, Function<UnitProperty, UnitParameter> unit) {
        UnitParameter chamber = unit.apply(UnitProperty.CHAMBER_MID_VOLUME);
        Rig small = rig.with(chamber, rig.get(chamber) / CHAMBER_FILL);
        double radius = 2e-3; // m
        for (UnitProperty circle : new UnitProperty[] {
            UnitProperty.LAND_INNER, UnitProperty.KIDNEY_INNER, UnitProperty.KIDNEY_OUTER, UnitProperty.LAND_OUTER
        }) {
            small = small.with(unit.apply(circle), radius);
            radius += 2e-4;
        }
        return small;
    }

    /** The same, leaking past its pistons at a stroke so that the high side loses C_t in all, m³/(s·Pa); its checks open at once. */
    static Rig leaking(Rig tight, double conductance, double stroke) {
        double first = leak(tight, stroke);
        double grown = leak(bores(tight, 2 * TIGHT), stroke) - first; // a ring leaks with the cube of its clearance
        return bores(tight, TIGHT * Math.cbrt(1 + 7 * (conductance - first) / grown))
                .with(LoopParameter.CHECK_CRACK, 0)
                .with(LoopParameter.CHECK_SPAN, 1e3)
                .with(LoopParameter.CHECK_AREA, 1e-3);
    }

    /** Conductance from one side to the case and to the other side, m³/(s·Pa). */
    static double leak(Rig rig, double stroke) {
        SteadySolver solver = new SteadySolver();
        solver.load(rig.vector());
        solver.solve(Duty.driving(stroke, WARM, 0).with(new InputState.Off()).with(new WheelState.Held()));
        double sum = 0; // m³
        for (UnitLaw unit : new UnitLaw[] {solver.balance.pump, solver.balance.motor}) {
            sum += unit.pistonConductance + unit.faceConductance + unit.bridgeConductance;
        }
        return sum / solver.balance.viscosity;
    }

    private static Rig bores(Rig rig, double clearance) {
        return rig.with(UnitParameter.pump(UnitProperty.BORE_CLEARANCE), clearance)
                .with(UnitParameter.motor(UnitProperty.BORE_CLEARANCE), clearance);
    }

    /** What an answer tends to as the oil gets rigid: at compliances c, 2c … 5c, carried on to none by a polynomial. */
    static double rigid(Rig rig, Function<Rig, Double> answer) {
        double[] weights = {5, -10, 10, -5, 1};
        double limit = 0;
        for (int i = 0; i < weights.length; i++) {
            limit += weights[i] * answer.apply(rig.with(OilParameter.BULK_MODULUS40, STIFF / (i + 1)));
        }
        return limit;
    }
}
