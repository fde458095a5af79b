package swashlight.bench;

import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.SteadyPoint;
import swashlight.drive.steady.SteadySolver;

/** The light rider with its duties and one reusable workspace. */
@State(Scope.Thread)
public class Rider {
    final SteadySolver solver = new SteadySolver();
    final SteadyPoint point = new SteadyPoint();
    double[] vector = new double[0];
    Duty[] duties = new Duty[0];

    /** Loads the drive. */
    @Setup(Level.Trial)
    public void load() {
        vector = RiderDuties.drive();
        duties = RiderDuties.all();
        solver.load(vector);
    }
}
