package swashlight.drive.steady;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Law: the slopes of every balance are those of its residuals, taken as differences around random settled points. */
final class SlopesTest {
    private static final long SEED = 20261126;

    @Test
    void slopesAreThoseOfTheResiduals() {
        RandomCases cases = new RandomCases(SEED);
        SteadySolver solver = new SteadySolver();
        int compared = 0;
        for (int i = 0; i < 3000; i++) {
            RandomCases.Case next = i % 2 == 0 ? cases.ordinary() : cases.unusual();
            solver.load(next.vector());
            if (solver.solve(next.duty())) {
                Balance balance = solver.balance;
                for (int k = 0; k < Balance.SIZE; k++) {
                    balance.unknown[k] *= 1 + 0.05 * cases.random.nextGaussian();
                }
                for (int column = 0; column < Balance.SIZE; column++) {
                    compared += compare(balance, column, next);
                }
            }
        }
        assertThat(compared).isGreaterThan(20_000);
    }

    /** Compares one column; differences on both sides must agree first, else a kink lies between. Returns how many were compared. */
    private static int compare(Balance balance, int column, RandomCases.Case next) {
        double at = balance.unknown[column];
        double step = 1e-6 * Math.max(Math.abs(at), column <= Balance.G ? 1e4 : 1e-2);
        double[] here = residual(balance, column, at);
        double[] slope = balance.slope.clone();
        double[] size = balance.size.clone();
        double[] before = residual(balance, column, at - step);
        double[] after = residual(balance, column, at + step);
        balance.unknown[column] = at;
        int compared = 0;
        for (int row = 0; row < Balance.SIZE; row++) {
            boolean given =
                    (row == Balance.MOTOR && !balance.motorFree) || (row == Balance.INPUT && !balance.engineDrives);
            if (given) {
                continue;
            }
            double rising = (after[row] - here[row]) / step;
            double falling = (here[row] - before[row]) / step;
            double rounding = 1e-14 * size[row] / step;
            double tolerance = 1e-4 * Math.abs(rising) + 1e2 * rounding;
            if (Math.abs(rising - falling) <= tolerance) {
                assertThat(slope[row * Balance.SIZE + column])
                        .as("balance " + row + " by unknown " + column + ", seed " + SEED + ", " + next)
                        .isBetween((rising + falling) / 2 - tolerance, (rising + falling) / 2 + tolerance);
                compared++;
            }
        }
        return compared;
    }

    private static double[] residual(Balance balance, int column, double value) {
        balance.unknown[column] = value;
        balance.evaluate();
        return balance.residual.clone();
    }
}
