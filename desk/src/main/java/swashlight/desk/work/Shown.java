package swashlight.desk.work;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.drive.heat.HeatedDrive;
import swashlight.drive.heat.SettledTemperature;
import swashlight.drive.oil.Oil;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.SteadyAnswer;
import swashlight.drive.steady.SteadyDrive;
import swashlight.drive.steady.SteadyPoint;
import swashlight.drive.steady.WheelState;

/** What a curve or a map shows of a drive under some circumstances. */
public enum Shown {
    SPEED("speed", Measure.SPEED),
    AXLE("axle", Measure.ROTATION),
    PULL("pull", Measure.FORCE),
    PRESSURE("pressure", Measure.PRESSURE),
    LEAK("leak", Measure.FLOW),
    EFFICIENCY("efficiency", Measure.SHARE),
    HEAT("heat", Measure.POWER),
    TORQUE("torque", Measure.TORQUE),
    ENGINE("engine", Measure.ROTATION),
    TEMPERATURE("temperature", Measure.TEMPERATURE);

    private static final double MOST_PULL = 1e5; // N, what a duty can state
    private static final int HALVINGS = 20;

    private final String key;
    private final Measure measure;

    Shown(String key, Measure measure) {
        this.key = key;
        this.measure = measure;
    }

    /** Its name on the command line. */
    public String key() {
        return key;
    }

    /** How it is measured. */
    public Measure measure() {
        return measure;
    }

    /** The quantity with a name. */
    static Optional<Shown> find(String key) {
        for (Shown shown : values()) {
            if (shown.key.equals(key)) {
                return Optional.of(shown);
            }
        }
        return Optional.empty();
    }

    /** The circumstances that matter to it: a temperature that settles asks for the air's, not for the oil's. */
    List<Line> lines(Circumstances when, Set<Condition> changing) {
        if (this != TEMPERATURE) {
            return when.linesWithout(changing);
        }
        Set<Condition> left = new HashSet<>(changing);
        left.add(Condition.OIL_TEMPERATURE);
        return when.with(Condition.AIR_TEMPERATURE, when.value(Condition.AIR_TEMPERATURE))
                .linesWithout(left);
    }

    /** Its value (SI of the measure); empty where there is none: not settled, or no efficiency to speak of. */
    OptionalDouble of(SickDrive drive, Circumstances when) {
        Duty duty = drive.on(when.duty());
        if (this == TEMPERATURE) {
            return new HeatedDrive(drive.drive()).settle(duty, when.value(Condition.AIR_TEMPERATURE))
                            instanceof SettledTemperature.Settled settled
                    ? OptionalDouble.of(settled.temperature())
                    : OptionalDouble.empty();
        }
        SteadyDrive steady = new SteadyDrive(drive.drive());
        return this == PULL
                ? pull(steady, duty)
                : settled(steady, duty).map(this::read).orElse(OptionalDouble.empty());
    }

    private OptionalDouble read(SteadyPoint point) {
        return switch (this) {
            case SPEED -> OptionalDouble.of(point.groundSpeed());
            case AXLE -> OptionalDouble.of(point.axleSpeed());
            case PRESSURE -> OptionalDouble.of(Math.max(point.pressureA(), point.pressureB()) - Oil.ATMOSPHERE);
            case LEAK -> OptionalDouble.of(point.makeUpFlow());
            case EFFICIENCY -> Efficiency.of(point);
            case HEAT -> OptionalDouble.of(point.heat());
            case TORQUE -> OptionalDouble.of(point.pumpTorque());
            case ENGINE -> OptionalDouble.of(point.engineSpeed());
            default -> OptionalDouble.empty();
        };
    }

    private static Optional<SteadyPoint> settled(SteadyDrive drive, Duty duty) {
        return drive.answer(duty) instanceof SteadyAnswer.Converged answer
                ? Optional.of(answer.point())
                : Optional.empty();
    }

    /** The largest drawbar load against which the machine still goes the way it is asked to. */
    private static OptionalDouble pull(SteadyDrive drive, Duty duty) {
        if (!(duty.wheels() instanceof WheelState.Ground ground) || !goes(drive, duty, ground, 0)) {
            return OptionalDouble.empty();
        }
        double low = 0;
        double high = MOST_PULL;
        for (int count = 0; count < HALVINGS; count++) {
            double middle = (low + high) / 2;
            if (goes(drive, duty, ground, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of(low);
    }

    private static boolean goes(SteadyDrive drive, Duty duty, WheelState.Ground ground, double load) {
        return settled(drive, duty.with(new WheelState.Ground(ground.slope(), load)))
                .map(point -> point.groundSpeed() * Math.signum(duty.stroke()) > 1e-3)
                .orElse(false);
    }
}
