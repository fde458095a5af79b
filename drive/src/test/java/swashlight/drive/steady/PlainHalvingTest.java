package swashlight.drive.steady;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import swashlight.drive.oil.Oil;

/**
 * Law: the obvious slow way finds what the quick one finds. At the speed the solver gives, gallery, side B and side A are each halved in
 * between until no oil is left over (what a place holds too much grows with its own pressure only); no slope is used. Then the motor's
 * torques must balance too.
 */
final class PlainHalvingTest {
    private static final long SEED = 20261130;
    private static final int HALVINGS = 70;
    private static final double HIGHEST = 3e8; // Pa

    @Test
    void halvingFindsTheSamePressures() {
        RandomCases cases = new RandomCases(SEED);
        SteadySolver solver = new SteadySolver();
        int compared = 0;
        while (compared < 25) {
            double[] vector = cases.ordinary().vector();
            double stroke = 2 * cases.random.nextDouble() - 1;
            double warmth = Oil.CELSIUS_ZERO + 110 * cases.random.nextDouble();
            Duty duty = Duty.driving(stroke, warmth, 0.4 * cases.random.nextDouble() - 0.2)
                    .with(new InputState.Fixed(350 * cases.random.nextDouble()));
            solver.load(vector);
            if (solver.solve(duty)) {
                Balance balance = solver.balance;
                double[] quick = balance.unknown.clone();
                boolean free = balance.motorFree;
                balance.motorFree = false;
                halve(balance, Balance.A);
                balance.motorFree = free;
                String story = "seed " + SEED + ", " + duty;
                for (int side = Balance.A; side <= Balance.G; side++) {
                    double scale = Math.max(1e5, Math.abs(quick[side]));
                    assertThat(balance.unknown[side])
                            .as(story)
                            .isBetween(quick[side] - 1e-8 * scale, quick[side] + 1e-8 * scale);
                }
                balance.evaluate();
                assertThat(Math.abs(balance.residual[Balance.MOTOR]))
                        .as(story)
                        .isLessThanOrEqualTo(1e-8 * balance.size[Balance.MOTOR]);
                compared++;
            }
        }
    }

    /** Halves a side until its oil balances, the sides after it being balanced at each try. */
    private static void halve(Balance balance, int side) {
        double low = side == Balance.G ? balance.cavityPressure : balance.emptiest();
        double high = HIGHEST;
        for (int count = 0; count < HALVINGS; count++) {
            balance.unknown[side] = (low + high) / 2;
            if (side < Balance.G) {
                halve(balance, side + 1);
            }
            balance.evaluate();
            if (balance.residual[side] > 0) {
                low = balance.unknown[side];
            } else {
                high = balance.unknown[side];
            }
        }
    }
}
