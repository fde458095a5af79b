package swashlight.drive.steady;

/**
 * The balances of one situation as plain equations f(x) = 0 with exact slopes, so that other solvers can be checked and measured against.
 *
 * <p>Which way the motor turns, whether the engine still drives and the like are decided already, as {@link SteadySolver} decides them: the
 * hard half is done. Unknowns and balances are scaled to order one; an unknown that is given in the situation has the equation 0 = 0 with
 * slope one. Mutable workspace, not for several threads. Units: x, f and slopes 1.
 */
public final class SteadyEquations {
    /** How many unknowns and equations; unit 1. */
    public static final int SIZE = Balance.SIZE;

    private static final double PRESSURE = 1e6; // Pa
    private static final double SPEED = 100; // rad/s
    private static final double LOAD = 10; // N·m

    private final SteadySolver solver = new SteadySolver();
    private final Balance balance = solver.balance;
    private final double[] start = new double[SIZE];
    private final double[] solution = new double[SIZE];
    private final double[] unit = {PRESSURE, PRESSURE, PRESSURE, SPEED, LOAD};

    /** Takes over a drive's values, in index order, SI. */
    public SteadyEquations(double[] vector) {
        solver.load(vector);
    }

    /** Decides and solves a duty, then goes back to where the solving of the situation found began; false when it does not settle. */
    public boolean pose(Duty duty) {
        boolean settled = solver.solve(duty);
        System.arraycopy(balance.unknown, 0, solution, 0, SIZE);
        solver.startAgain();
        System.arraycopy(balance.unknown, 0, start, 0, SIZE);
        balance.evaluate();
        solver.kernel.scales();
        return settled;
    }

    /** Where the solver of the drive begins; into[i] scaled, 1. */
    public void start(double[] into) {
        scaled(start, into);
    }

    /** What the solver of the drive finds; into[i] scaled, 1. */
    public void solution(double[] into) {
        scaled(solution, into);
    }

    /** Sets the unknowns and evaluates all balances. */
    public void evaluate(double[] x) {
        for (int i = 0; i < SIZE; i++) {
            balance.unknown[i] = x[i] * unit[i];
        }
        balance.evaluate();
    }

    /** Balances at the unknowns last set; scaled, 1. */
    public void residual(double[] into) {
        for (int i = 0; i < SIZE; i++) {
            into[i] = balance.residual[i] / solver.kernel.scale(i);
        }
    }

    /** Slope of balance {@code row} by unknown {@code column} at the unknowns last set; scaled, 1. */
    public double slope(int row, int column) {
        return balance.slope[row * SIZE + column] * unit[column] / solver.kernel.scale(row);
    }

    /** Moves unknowns back to where the laws hold: no side emptier than empty, no belt faster than its slip; x scaled, 1. */
    public void hold(double[] x) {
        for (int i = 0; i < SIZE; i++) {
            x[i] = solver.kernel.held(i, x[i] * unit[i]) / unit[i];
        }
    }

    /** True when every balance is met at the unknowns last set, as closely as the drive's own solver asks. */
    public boolean solved() {
        return solver.kernel.solved();
    }

    /** Solves from the start with the drive's own kernel; true when solved. The unknowns last set are then the solution. */
    public boolean solve() {
        System.arraycopy(start, 0, balance.unknown, 0, SIZE);
        return solver.kernel.solve();
    }

    /** Pressure of side A that an unknown stands for, Pa. */
    public double pressureA(double[] x) {
        return Math.max(balance.cavityPressure, x[Balance.A] * PRESSURE);
    }

    /** Pressure of side B that an unknown stands for, Pa. */
    public double pressureB(double[] x) {
        return Math.max(balance.cavityPressure, x[Balance.B] * PRESSURE);
    }

    /** Speed of the motor that the unknowns stand for, rad/s. */
    public double motorSpeed(double[] x) {
        return balance.motorFree ? x[Balance.MOTOR] * SPEED : balance.motorSpeed;
    }

    private void scaled(double[] values, double[] into) {
        for (int i = 0; i < SIZE; i++) {
            into[i] = values[i] / unit[i];
        }
    }
}
