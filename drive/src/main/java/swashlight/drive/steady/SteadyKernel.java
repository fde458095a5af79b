package swashlight.drive.steady;

import static swashlight.drive.steady.Balance.A;
import static swashlight.drive.steady.Balance.B;
import static swashlight.drive.steady.Balance.G;
import static swashlight.drive.steady.Balance.INPUT;
import static swashlight.drive.steady.Balance.MOTOR;
import static swashlight.drive.steady.Balance.SIZE;

/**
 * Solves the balances: Newton with exact slopes and a shortening step; where that fails, a walk in pseudo-time (each unknown moves the
 * way its balance pushes it, in growing implicit steps), which follows what a real drive would do.
 *
 * <p>Source: Kelley and Keyes, Convergence analysis of pseudo-transient continuation, SIAM J. Numer. Anal. 35 (1998) 508 (from
 * memory). Mutable workspace, no allocation.
 */
final class SteadyKernel {
    /** Largest residual over the sum of magnitudes in its balance that counts as solved, 1. */
    static final double TOLERANCE = 1e-12;

    private static final double FLOW_FLOOR = 1e-19; // m³/s: far below any reading
    private static final double TORQUE_FLOOR = 1e-13; // N·m
    private static final double ROUNDING =
            2 * 0x1p-53; // what the last digits of an unknown leave of its own balance, 1
    private static final int NEWTON_STEPS = 40;
    private static final int AT_ONCE = 12; // steps of an easy case
    private static final int WRONG_WAYS = 1; // steps in a row
    private static final int FULL_STEPS = 20;
    private static final int HALVINGS = 20;
    private static final int WALK_STEPS = 400;
    private static final double WORSE = 4; // growth of the merit at which a step of the walk is taken back, 1

    final Balance balance = new Balance();
    private final double[] step = new double[SIZE];
    private final double[] matrix = new double[SIZE * SIZE];
    private final double[] scale = new double[SIZE];
    private final double tolerance;
    int iterations;

    SteadyKernel(double tolerance) {
        this.tolerance = tolerance;
    }

    /** Solves from the present unknowns; false when neither way converges. */
    boolean solve() {
        if (newton()) {
            return true;
        }
        rest();
        walk();
        return newton() || undamped();
    }

    /** Newton alone, from unknowns that are nearly right. */
    boolean polish() {
        return newton();
    }

    /** Newton alone, given up as soon as the motor keeps turning against the direction assumed. */
    boolean solvesAtOnce() {
        return newton(AT_ONCE, WRONG_WAYS);
    }

    private boolean newton() {
        return newton(NEWTON_STEPS, NEWTON_STEPS);
    }

    /** At most so many steps, and at most so many in a row with the motor turning against the direction assumed. */
    private boolean newton(int most, int patience) {
        balance.evaluate();
        scales();
        double merit = merit();
        int wrongWays = 0;
        for (int count = 0; count < most; count++) {
            if (solved()) {
                return true;
            }
            iterations++;
            if (!direction()) {
                return false;
            }
            double next = shortened(merit);
            if (!(next < merit)) {
                stepBack();
                return solved() || worst() < 1e3 * tolerance;
            }
            merit = next;
            wrongWays = balance.motorSpeed * balance.direction < 0 ? wrongWays + 1 : 0;
            if (wrongWays > patience) {
                return false;
            }
        }
        return solved();
    }

    /**
     * Steps whatever the merit says, for it may have to rise where one balance is far smaller than the others: full ones first, then half ones
     * for where those only jump to and fro over a valve's edge, full ones again to end with.
     */
    private boolean undamped() {
        for (int count = 0; count < 3 * FULL_STEPS; count++) {
            if (!direction()) {
                return false;
            }
            iterations++;
            System.arraycopy(balance.unknown, 0, scratch, 0, SIZE);
            move(count / FULL_STEPS == 1 ? 0.5 : 1);
            balance.evaluate();
            if (solved()) {
                return true;
            }
        }
        return false;
    }

    /** Sets the Newton step; false when the slopes are singular. */
    private boolean direction() {
        System.arraycopy(balance.slope, 0, matrix, 0, matrix.length);
        for (int i = 0; i < SIZE; i++) {
            step[i] = -balance.residual[i];
        }
        return SmallSystem.solve(matrix, step);
    }

    /** Takes the longest of step, step/2, step/4 … that lowers the merit; returns the merit reached. */
    private double shortened(double merit) {
        System.arraycopy(balance.unknown, 0, scratch, 0, SIZE);
        double share = 1;
        double reached = merit;
        for (int halving = 0; halving < HALVINGS; halving++) {
            move(share);
            balance.evaluate();
            reached = merit();
            if (reached < merit * (1 - 1e-4 * share) || (reached <= merit && solved())) {
                return reached;
            }
            share /= 2;
        }
        return reached;
    }

    private final double[] scratch = new double[SIZE];

    private void move(double share) {
        for (int i = 0; i < SIZE; i++) {
            double moved = scratch[i] + share * step[i];
            balance.unknown[i] = held(i, moved);
        }
    }

    private void stepBack() {
        System.arraycopy(scratch, 0, balance.unknown, 0, SIZE);
        balance.evaluate();
    }

    /** An unknown kept where its law holds: sides not emptier than empty, the belt not slipping by more than its whole speed. */
    double held(int index, double moved) {
        if (index <= G) {
            return Math.max(index == G ? balance.cavityPressure : balance.emptiest(), moved);
        }
        double most = index == INPUT && balance.engineDrives ? balance.engine.mostLoad() : Double.MAX_VALUE;
        return Math.max(-most, Math.min(most, moved));
    }

    /** Everything still and at case pressure: where the walk begins. */
    private void rest() {
        for (int side = A; side <= G; side++) {
            balance.unknown[side] = balance.casePressure;
        }
        balance.unknown[MOTOR] = balance.motorFree ? balance.direction : 0; // rad/s
        balance.unknown[INPUT] = 0;
    }

    /** Implicit steps in pseudo-time, growing as the balances come to rest. */
    private void walk() {
        balance.evaluate();
        scales();
        double merit = merit();
        double pace = 1e-3;
        for (int count = 0; count < WALK_STEPS; count++) {
            iterations++;
            for (int row = 0; row < SIZE; row++) {
                double sign = row == INPUT ? -1 : 1;
                for (int column = 0; column < SIZE; column++) {
                    matrix[row * SIZE + column] = -sign * balance.slope[row * SIZE + column];
                }
                matrix[row * SIZE + row] += inertia(row) / pace;
                step[row] = sign * balance.residual[row];
            }
            if (!SmallSystem.solve(matrix, step)) {
                return;
            }
            System.arraycopy(balance.unknown, 0, scratch, 0, SIZE);
            move(1);
            balance.evaluate();
            double next = merit();
            if (!(next < WORSE * merit)) {
                stepBack();
                pace /= 8;
                continue;
            }
            if (next < 1e-10) {
                return;
            }
            pace *= Math.max(0.5, Math.min(3, Math.sqrt(merit / next) * 1.5));
            pace = Math.min(1e9, pace);
            merit = next;
        }
    }

    /** Pseudo-inertia of an unknown, so that the walk's time is about a loop's own: balance unit · s per unit of the unknown. */
    private double inertia(int row) {
        return switch (row) {
            case A, B, G -> 2e-14; // 20 cm³ of oil at 1 GPa, m³/Pa
            case MOTOR -> balance.motorFree ? 0.01 : 0; // kg·m²
            default -> balance.engineDrives ? 0.05 : 0; // the belt load takes up its torque, s
        };
    }

    /** What one of a balance counts in the merit: m³/s or N·m. */
    double scale(int row) {
        return scale[row];
    }

    void scales() {
        double carried = Math.abs(balance.pump.displacement * balance.pumpSpeed) / (2 * Math.PI);
        for (int i = A; i <= G; i++) {
            scale[i] = Math.max(1e-7, carried);
        }
        scale[G] = Math.min(scale[G], Math.max(1e-13, balance.filterConductance * balance.casePressure));
        scale[MOTOR] = Math.max(0.1, Math.abs(balance.load.motorTorque));
        scale[INPUT] = Math.max(0.1, Math.abs(balance.pump.torquePerPressure) * 3e6);
    }

    private double merit() {
        double sum = 0;
        for (int i = 0; i < SIZE; i++) {
            double part = balance.residual[i] / scale[i];
            sum += part * part;
        }
        return sum;
    }

    boolean solved() {
        for (int i = 0; i < SIZE; i++) {
            if (!(Math.abs(balance.residual[i]) <= tolerance * balance.size[i] + allowed(i))) {
                return false;
            }
        }
        return true;
    }

    /** Largest residual over what its balance is made of, 1; from the present unknowns. */
    double worst() {
        double worst = 0;
        for (int i = 0; i < SIZE; i++) {
            worst = Math.max(worst, Math.abs(balance.residual[i]) / (balance.size[i] + allowed(i) / tolerance));
        }
        return worst;
    }

    /** Residual that means nothing: beyond any reading, or what the last digits of an unknown leave of its own balance; m³/s or N·m. */
    private double allowed(int row) {
        double floor = row <= G ? FLOW_FLOOR : TORQUE_FLOOR;
        return floor + ROUNDING * Math.abs(balance.slope[row * SIZE + row] * balance.unknown[row]);
    }
}
