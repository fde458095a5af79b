package swashlight.desk.work;

import java.util.OptionalDouble;
import swashlight.drive.steady.SteadyPoint;

/** Power the wheels give the ground over power at the input shaft, 1; only where power goes that way. */
final class Efficiency {
    private Efficiency() {}

    static OptionalDouble of(SteadyPoint point) {
        double given = point.pumpTorque() * point.pumpSpeed();
        double used = point.groundForce() * point.groundSpeed();
        return given > 0 && used > 0 ? OptionalDouble.of(used / given) : OptionalDouble.empty();
    }
}
