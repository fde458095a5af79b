package swashlight.drive.steady;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.fault.Faults;

/** A drive on the bench of the tests: a typical one with some numbers changed, asked duty by duty. */
final class Rig {
    private final double[] vector;

    private Rig(double[] vector) {
        this.vector = vector;
    }

    static Rig typical() {
        return new Rig(TypicalDrive.complete("rig", true, Map.of()).vector());
    }

    static Rig of(double[] vector) {
        return new Rig(vector.clone());
    }

    /** A copy with one number changed, SI. */
    Rig with(Parameter parameter, double value) {
        Rig changed = new Rig(vector.clone());
        changed.vector[parameter.index()] = value;
        return changed;
    }

    /** A copy with a single fault, severity in its SI unit. */
    Rig with(String fault, double severity) {
        Rig changed = new Rig(vector.clone());
        Faults.find(fault).orElseThrow().apply(changed.vector, severity);
        return changed;
    }

    double get(Parameter parameter) {
        return vector[parameter.index()];
    }

    double[] vector() {
        return vector.clone();
    }

    /** The settled state under a duty; fails where none is found. */
    SteadyPoint at(Duty duty) {
        SteadySolver solver = new SteadySolver();
        solver.load(vector);
        assertThat(solver.solve(duty)).as("settles: " + duty).isTrue();
        SteadyPoint point = new SteadyPoint();
        point.fill(solver);
        return point;
    }
}
