package swashlight.findings.insight;

import java.util.List;
import swashlight.drive.description.Dimension;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.LedgerItem;
import swashlight.drive.steady.SteadyPoint;
import swashlight.drive.steady.SteadySolver;
import swashlight.drive.steady.WheelState;

/** What one would like to know about a drive; computed at one climb, oil hot, or a push. */
public enum Wanted {
    /** Oil lost between pump and motor on the forward climb. */
    LEAK_FORWARD("leakForward", Dimension.FLOW),
    /** The same less that of the climb in reverse. */
    ASYMMETRY("asymmetry", Dimension.FLOW),
    /** Oil lost by the pump less that lost by the motor, on the forward climb. */
    PUMP_OR_MOTOR("pumpOrMotor", Dimension.FLOW),
    /** Share of its speed that the belt slips on the forward climb. */
    BELT_SLIP("beltSlip", Dimension.NUMBER),
    /** Share of full forward swash reached. */
    STROKE("stroke", Dimension.NUMBER),
    /** Force to push the machine on the level with the bypass open. */
    DRAG("drag", Dimension.FORCE);

    private static final double HOT = 353.15; // K, 80 °C
    private static final double CLIMB = 0.1745; // rad, 10°
    private static final double WALKING = 0.5; // m/s
    private static final List<LedgerItem> PUMP = List.of(
            LedgerItem.PUMP_PISTONS,
            LedgerItem.PUMP_BAD_PISTON,
            LedgerItem.PUMP_FACE,
            LedgerItem.PUMP_SCORES,
            LedgerItem.PUMP_SHOES,
            LedgerItem.PUMP_BRIDGE,
            LedgerItem.PUMP_BRIDGE_SCORE);
    private static final List<LedgerItem> MOTOR = List.of(
            LedgerItem.MOTOR_PISTONS,
            LedgerItem.MOTOR_BAD_PISTON,
            LedgerItem.MOTOR_FACE,
            LedgerItem.MOTOR_SCORES,
            LedgerItem.MOTOR_SHOES,
            LedgerItem.MOTOR_BRIDGE,
            LedgerItem.MOTOR_BRIDGE_SCORE);

    private final String key;
    private final Dimension dimension;

    Wanted(String key, Dimension dimension) {
        this.key = key;
        this.dimension = dimension;
    }

    /** Stable name. */
    public String key() {
        return key;
    }

    /** What it measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** All of them on the loaded drive (values in index order, SI), each in the SI unit of its dimension. */
    static double[] all(double[] vector, double full) {
        SteadySolver solver = new SteadySolver();
        SteadyPoint point = new SteadyPoint();
        solver.load(vector);
        double[] values = new double[values().length];
        solver.solve(Duty.driving(1, HOT, CLIMB));
        point.fill(solver);
        double forward = lost(point, PUMP) + lost(point, MOTOR) + valves(point);
        values[LEAK_FORWARD.ordinal()] = forward;
        values[PUMP_OR_MOTOR.ordinal()] = lost(point, PUMP) - lost(point, MOTOR);
        values[BELT_SLIP.ordinal()] = point.beltSlip();
        values[STROKE.ordinal()] = point.swashAngle() / full;
        solver.solve(Duty.driving(-1, HOT, -CLIMB));
        point.fill(solver);
        values[ASYMMETRY.ordinal()] = forward - lost(point, PUMP) - lost(point, MOTOR) - valves(point);
        solver.solve(
                Duty.rollDown(HOT, 0).with(new WheelState.Pushed(WALKING, 0)).withBypass(1));
        point.fill(solver);
        values[DRAG.ordinal()] = point.pushForce();
        return values;
    }

    /** Oil that leaves the side of higher pressure through some items, m³/s. */
    private static double lost(SteadyPoint point, List<LedgerItem> items) {
        boolean high = point.pressureA() > point.pressureB();
        double sum = 0;
        for (LedgerItem item : items) {
            sum -= high ? point.intoA(item) : point.intoB(item);
        }
        return sum;
    }

    private static double valves(SteadyPoint point) {
        return lost(
                point,
                List.of(
                        LedgerItem.CHECK_A,
                        LedgerItem.CHECK_B,
                        LedgerItem.BLEED_A,
                        LedgerItem.BLEED_B,
                        LedgerItem.BYPASS,
                        LedgerItem.RELIEF));
    }
}
