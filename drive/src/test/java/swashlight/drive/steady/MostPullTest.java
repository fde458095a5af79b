package swashlight.drive.steady;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import swashlight.drive.description.OutputParameter;
import swashlight.drive.oil.Oil;

/** Law: the largest pull is where patient halving finds that the machine stops going, on sound and faulty drives by lot. Seed fixed. */
final class MostPullTest {
    private static final int CASES = 4000;
    private static final double SLOWEST = 1e-6; // m/s: stands
    private static final double CLOSE = 0.001; // of the pull, 1
    private static final double SMALL = 0.5; // N

    private final SteadySolver solver = new SteadySolver();
    private final SteadyPoint point = new SteadyPoint();

    @Test
    void isWhereTheMachineStops() {
        RandomCases lot = new RandomCases(12);
        MostPull most = new MostPull(solver);
        int told = 0;
        int differ = 0;
        for (int i = 0; i < CASES; i++) {
            RandomCases.Case each = lot.ordinary();
            double slope = 0.2 * (lot.random.nextDouble() - 0.5);
            double stroke = lot.random.nextInt(2) == 0 ? 1 : -0.6;
            Duty duty = Duty.driving(stroke, Oil.CELSIUS_ZERO + 100 * lot.random.nextDouble(), slope);
            solver.load(each.vector());
            if (most.solve(duty, slope)) {
                told++;
                double halved = halved(duty, slope, each.vector());
                differ += Math.abs(most.pull() - halved) > CLOSE * halved + SMALL ? 1 : 0;
            }
        }
        System.out.println("largest pull, told by law: " + told + " of " + CASES + ", other than halving: " + differ);
        assertThat(told).isGreaterThan(CASES * 8 / 10);
        assertThat(differ).isZero();
    }

    private double halved(Duty duty, double slope, double[] vector) {
        double low = 0;
        double high = 1.3 * vector[OutputParameter.MACHINE_MASS.index()] * LoadLaw.GRAVITY;
        if (!moves(duty, slope, 0)) {
            return 0;
        }
        for (int i = 0; i < 30; i++) {
            double middle = (low + high) / 2;
            boolean moves = moves(duty, slope, middle);
            low = moves ? middle : low;
            high = moves ? high : middle;
        }
        return low;
    }

    private boolean moves(Duty duty, double slope, double pull) {
        boolean solved = solver.solve(duty.with(new WheelState.Ground(slope, pull)));
        point.fill(solver);
        return solved && Math.signum(duty.stroke()) * point.groundSpeed() > SLOWEST;
    }
}
