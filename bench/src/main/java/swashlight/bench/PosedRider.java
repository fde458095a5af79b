package swashlight.bench;

import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.SteadyEquations;

/** All duties as equations, each situation decided, so that solvers are compared on solving alone. */
@State(Scope.Thread)
public class PosedRider {
    SteadyEquations[] equations = new SteadyEquations[0];

    /** Poses every duty once. */
    @Setup(Level.Trial)
    public void pose() {
        Duty[] duties = RiderDuties.all();
        double[] vector = RiderDuties.drive();
        equations = new SteadyEquations[duties.length];
        for (int i = 0; i < duties.length; i++) {
            equations[i] = new SteadyEquations(vector);
            if (!equations[i].pose(duties[i])) {
                throw new IllegalStateException("does not settle: " + duties[i]);
            }
        }
    }
}
