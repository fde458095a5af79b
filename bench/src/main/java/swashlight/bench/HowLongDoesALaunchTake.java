package swashlight.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionRun;

/** One second of a drive, piston by piston, at the usual tolerance: the launch that {@code bench/peers} puts beside CVODE. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class HowLongDoesALaunchTake {
    /** Pistons of pump and of motor, 1. */
    @Param({"5", "7", "9", "15"})
    public int pistons = 7;

    /** From rest, description and start included. */
    @Benchmark
    public double launch() {
        MotionRun run = Launch.start(pistons, MotionRun.USUAL_TOLERANCE);
        run.advance(Launch.UNTIL);
        return run.value(MotionChannel.GROUND_SPEED);
    }
}
