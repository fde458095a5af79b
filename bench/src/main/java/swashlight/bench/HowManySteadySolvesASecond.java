package swashlight.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.SteadyEquations;

/**
 * Steady solves a second on one core: the whole answer (situation decided, solved, ledger booked), and, on situations already decided, the
 * drive's own kernel beside a general solver of a well-kept library, on the same balances and slopes, from the same start, to the same
 * tolerance.
 */
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@OperationsPerInvocation(RiderDuties.COUNT)
public class HowManySteadySolvesASecond {
    /** Decides, solves and books every duty. */
    @Benchmark
    public double wholeAnswer(Rider rider) {
        double sum = 0;
        for (Duty duty : rider.duties) {
            rider.solver.solve(duty);
            rider.point.fill(rider.solver);
            sum += rider.point.groundSpeed() + rider.point.heat();
        }
        return sum;
    }

    /** The same for a drive that is new each time, as a study over many machines has it. */
    @Benchmark
    public double wholeAnswerOfANewDrive(Rider rider) {
        double sum = 0;
        for (Duty duty : rider.duties) {
            rider.solver.load(rider.vector);
            rider.solver.solve(duty);
            rider.point.fill(rider.solver);
            sum += rider.point.groundSpeed() + rider.point.heat();
        }
        return sum;
    }

    /** The drive's own kernel on decided situations. */
    @Benchmark
    public int ownKernel(PosedRider posed) {
        return solvedBy(Peer.OWN, posed);
    }

    /** Levenberg–Marquardt of Hipparchus on decided situations. */
    @Benchmark
    public int levenbergMarquardt(PosedRider posed) {
        return solvedBy(Peer.LEVENBERG_MARQUARDT, posed);
    }

    /** Gauss–Newton of Hipparchus, for a square system Newton's method, on decided situations. */
    @Benchmark
    public int gaussNewton(PosedRider posed) {
        return solvedBy(Peer.GAUSS_NEWTON, posed);
    }

    private static int solvedBy(Peer peer, PosedRider posed) {
        int solved = 0;
        for (SteadyEquations equations : posed.equations) {
            solved += peer.solve(equations) ? 1 : 0;
        }
        return solved;
    }
}
