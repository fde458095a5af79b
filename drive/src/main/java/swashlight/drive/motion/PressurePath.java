package swashlight.drive.motion;

/**
 * Where pressures come from and go to within a step: first guesses for the stages, a way back, and how much a step bent them.
 *
 * <p>Pressures are not the state (oil mass is), so a guess costs accuracy nothing: it only saves Newton steps. SI; flat workspace of {@link
 * MotionKernel}.
 */
final class PressurePath {
    private static final double BEND_SCALE = 2e5; // Pa: below it pressures count absolutely
    private static final double LEAST_SHARE = 0.5; // a guess never falls below this share of the present pressure, 1

    private final ChamberSet pump;
    private final ChamberSet motor;
    private final SideSystem sides;
    private final int firstSide;
    private final double[] start; // Pa
    private final double[] middle; // at the first stage, Pa
    private final double[] trend; // change over the last step, Pa

    PressurePath(ChamberSet pump, ChamberSet motor, SideSystem sides) {
        this.pump = pump;
        this.motor = motor;
        this.sides = sides;
        firstSide = pump.count + motor.count;
        start = new double[firstSide + 3];
        middle = new double[start.length];
        trend = new double[start.length];
    }

    void begin() {
        System.arraycopy(pump.pressure, 0, start, 0, pump.count);
        System.arraycopy(motor.pressure, 0, start, pump.count, motor.count);
        System.arraycopy(sides.pressure, 0, start, firstSide, 3);
    }

    void back() {
        System.arraycopy(start, 0, pump.pressure, 0, pump.count);
        System.arraycopy(start, pump.count, motor.pressure, 0, motor.count);
        System.arraycopy(start, firstSide, sides.pressure, 0, 3);
    }

    /** Starts the first stage's pressures from where they were heading: share (1) of the last step to look ahead. */
    void foresee(double share) {
        double most = Math.min(share, 1);
        ahead(pump.pressure, 0, pump.count, most);
        ahead(motor.pressure, pump.count, motor.count, most);
        ahead(sides.pressure, firstSide, 3, most);
    }

    private void ahead(double[] pressure, int first, int count, double share) {
        for (int k = 0; k < count; k++) {
            double guess = pressure[k] + share * trend[first + k];
            pressure[k] = Math.max(LEAST_SHARE * pressure[k], guess);
        }
    }

    /** Starts the second stage's pressures on the line from the step's start through the first stage. */
    void lean(double carry) {
        lean(pump.pressure, 0, pump.count, carry);
        lean(motor.pressure, pump.count, motor.count, carry);
        lean(sides.pressure, firstSide, 3, carry);
    }

    private void lean(double[] pressure, int first, int count, double carry) {
        for (int k = 0; k < count; k++) {
            double now = pressure[k];
            middle[first + k] = now;
            double guess = now + carry * (now - start[first + k]);
            pressure[k] = Math.max(LEAST_SHARE * now, guess);
        }
    }

    /** How far the end lies off the line through start and first stage, in torque and side pressure, over their own sizes; 1. */
    double bend() {
        double difference = Math.abs(sides.pressure[SideSystem.A] - sides.pressure[SideSystem.B]) + BEND_SCALE;
        double torque = bent(pump, 0) / (reach(pump) + 1e-9) + bent(motor, pump.count) / reach(motor);
        double side = 0;
        for (int s = 0; s < 3; s++) {
            double chord = (middle[firstSide + s] - start[firstSide + s]) / MotionKernel.GAMMA;
            trend[firstSide + s] = sides.pressure[s] - start[firstSide + s];
            if (s < 2) {
                side = Math.max(side, Math.abs(trend[firstSide + s] - chord));
            }
        }
        return Math.max(torque, side) / difference;
    }

    /** Torque per pressure of a unit, m³. */
    private static double reach(ChamberSet unit) {
        return Math.abs(unit.area * unit.pitch * unit.tan * unit.count / Math.PI);
    }

    private double bent(ChamberSet unit, int first) {
        double sum = 0;
        for (int k = 0; k < unit.count; k++) {
            double chord = (middle[first + k] - start[first + k]) / MotionKernel.GAMMA;
            double moved = unit.pressure[k] - start[first + k];
            trend[first + k] = moved;
            sum += Math.abs(unit.volumeSlope[k] * (moved - chord));
        }
        return sum;
    }
}
