package swashlight.findings.expect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.fault.Faults;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.SteadyPoint;
import swashlight.drive.steady.SteadySolver;
import swashlight.drive.steady.WheelState;

/** Law: the pull found is the one that patient halving finds, on random sound and worn drives. Seeds fixed. */
final class PullSearchTest {
    private static final DriveDescription DRIVE = TypicalDrive.complete("typical", true, Map.of());

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void isWhatHalvingFinds(long seed) {
        double[] vector = drawn(new Random(seed));
        SteadySolver solver = new SteadySolver();
        SteadyPoint point = new SteadyPoint();
        solver.load(vector);
        Duty duty = Duty.driving(seed % 2 == 0 ? 1 : -1, 343, seed % 3 == 0 ? 0.1 : 0);
        PullSearch search = new PullSearch(solver, point);
        assertThat(search.search(duty, vector)).isTrue();
        double halved = halved(solver, point, duty);
        assertThat(search.pull()).isCloseTo(halved, within(0.003 * halved + 1));
    }

    private static double halved(SteadySolver solver, SteadyPoint point, Duty duty) {
        double low = 0;
        double high = 2e4;
        double slope = ((WheelState.Ground) duty.wheels()).slope();
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            boolean solved = solver.solve(duty.with(new WheelState.Ground(slope, middle)));
            point.fill(solver);
            boolean moves = solved && duty.stroke() * point.groundSpeed() > 1e-3;
            low = moves ? middle : low;
            high = moves ? high : middle;
        }
        return low;
    }

    private static double[] drawn(Random chance) {
        double[] vector = DRIVE.vector();
        for (Parameter parameter : Parameters.all()) {
            double value = vector[parameter.index()];
            double share = value > 0 ? DRIVE.quantity(parameter).spread() / value : 0;
            double moved = value * Math.exp(Math.min(0.2, share) * chance.nextGaussian());
            vector[parameter.index()] = Math.max(parameter.low(), Math.min(parameter.high(), moved));
        }
        Faults.find("pump-face-worn").orElseThrow().apply(vector, 1e-5 * (1 + chance.nextInt(4)));
        return vector;
    }
}
