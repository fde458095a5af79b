package swashlight.drive.steady;

/**
 * The largest drawbar pull of a drive on the ground, from one state or two.
 *
 * <pre>
 *   P = min(F_limit, (T_motor i η − T_drag − T_brake)/r) − (F_rolling + F_scrub ± F_grade)        N
 *
 *   T_motor   torque of the motor, wheels held still      N·m
 * </pre>
 *
 * Why the held wheels tell it: at a given motor speed ω, leaks and reliefs pass more the higher the pressure, while engine, belt and pump
 * deliver less; so there is one pressure only, it falls as ω grows, and the torque with it. The motor gives most at rest, and against anything
 * less it turns; an engine that runs with the wheels held also runs with less load. Where the held wheels would stall the engine, but it can
 * spin them, the tyres end the pull all the same: that is the second state. Else the law does not tell, nor where the belt lets go altogether,
 * nor where tyres slip so much that they stand before their limit is reached.
 *
 * <p>Source: statics and the laws of {@link LoadLaw} and {@link EngineLaw}; checked against halving in {@code PullSearchTest}. Workspace.
 */
public final class MostPull {
    private static final double STIFF =
            8; // slip stiffness from which the limit is reached within 0.04 % before full slip, 1

    private final SteadySolver solver;
    private double pull; // N

    /** For the drive loaded in a solver. */
    public MostPull(SteadySolver solver) {
        this.solver = solver;
    }

    /** Works it out for a duty on a slope (rad), whatever its wheels are said to do; false where the law does not tell it. */
    public boolean solve(Duty duty, double slope) {
        pull = 0;
        Balance balance = solver.balance;
        LoadLaw load = balance.load;
        int direction = duty.stroke() < 0 ? -1 : 1;
        boolean held = solver.hold(duty.with(new WheelState.Ground(slope, 0))) && !solver.beltOff;
        double asked = load.rollingForce + load.pullForce + direction * load.gradeForce;
        if (!held || !load.connected || load.stiffness < STIFF) {
            return false;
        }
        if (solver.stalled) {
            pull = Math.max(0, load.tractionLimit - asked);
            return spins(duty.with(new WheelState.Ground(slope, WheelState.Ground.MOST_PULL)), direction);
        }
        double sum = balance.pressure[Balance.A] + balance.pressure[Balance.B] - 2 * balance.casePressure;
        double torque = direction * balance.motorOilTorque - balance.motor.frictionPerPressure * Math.max(0, sum);
        double axle = torque * load.ratio * load.efficiency - load.dragTorque - load.brakeTorque;
        pull = Math.max(0, Math.min(load.tractionLimit, axle / load.radius) - asked);
        return axle > 0 || pull == 0; // a drive that slope and load turn is another matter
    }

    private boolean spins(Duty duty, int direction) {
        return solver.solve(duty)
                && !solver.stalled
                && !solver.standing
                && solver.balance.load.spinning
                && solver.balance.motorSpeed * direction > 0;
    }

    /** The largest pull, N; 0 where the drive does not move at all. Holds when {@link #solve} told it. */
    public double pull() {
        return pull;
    }
}
