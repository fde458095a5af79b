package swashlight.findings.losses;

import java.util.List;
import java.util.Optional;
import swashlight.drive.oil.Oil;
import swashlight.drive.unit.Efficiency;
import swashlight.drive.unit.IdealUnit;

/**
 * One unit on the bench.
 *
 * @param points rows
 * @param kind pump or motor
 * @param oil the oil used
 */
public record BenchRun(List<BenchPoint> points, Kind kind, Oil oil) {
    /** Which way the unit works. */
    public enum Kind {
        /** Takes torque, gives flow. */
        PUMP(-1, 1),
        /** Takes flow, gives torque. */
        MOTOR(1, -1);

        private final int flowSign;
        private final int torqueSign;

        Kind(int flowSign, int torqueSign) {
            this.flowSign = flowSign;
            this.torqueSign = torqueSign;
        }

        /** −1 if losses take from the measured flow, 1 if they add to it. */
        int flowSign() {
            return flowSign;
        }

        /** −1 if losses take from the measured torque, 1 if they add to it. */
        int torqueSign() {
            return torqueSign;
        }
    }

    /** Keeps its own copy of the rows. */
    public BenchRun {
        points = List.copyOf(points);
    }

    /**
     * Efficiencies of a row.
     *
     * @param displacement V at full stroke, m³/rev
     * @return empty without torque or without pressure
     */
    public Optional<Efficiency> efficiency(BenchPoint point, double displacement) {
        if (point.torque().isEmpty() || !(point.pressureDifference() > 0)) {
            return Optional.empty();
        }
        IdealUnit ideal = new IdealUnit(point.share() * displacement, point.speed(), point.pressureDifference());
        double torque = point.torque().getAsDouble();
        return Optional.of(
                kind == Kind.PUMP
                        ? Efficiency.ofPump(ideal, point.flow(), torque)
                        : Efficiency.ofMotor(ideal, point.flow(), torque));
    }

    /** µ of a row's oil at atmospheric pressure, Pa·s. */
    double viscosity(BenchPoint point) {
        return oil.kinematicViscosity(point.temperature()) * oil.density(point.temperature());
    }
}
