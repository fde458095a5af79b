package swashlight.drive.steady;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.LoopParameter;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.oil.Oil;

/**
 * Laws: what grows with what, on random drives. A wider way never leaks less, hotter oil never leaks less at the same pressures, and neither
 * a leak nor a load ever makes a machine climb faster at a given input speed.
 */
final class MonotoneTest {
    private static final long SEED = 20261128;
    private static final int DRIVES = 150;
    private static final int STEPS = 6;
    private static final double ROUNDING = 1e-9; // 1

    /** A way for oil, and how wide it may grow, SI. */
    private record Way(Parameter parameter, double widest) {}

    private static final List<Way> WAYS = List.of(
            new Way(UnitParameter.pump(UnitProperty.BORE_CLEARANCE), 6e-5),
            new Way(UnitParameter.motor(UnitProperty.BORE_CLEARANCE), 6e-5),
            new Way(UnitParameter.pump(UnitProperty.BAD_PISTON_CLEARANCE), 2e-4),
            new Way(UnitParameter.motor(UnitProperty.BAD_PISTON_CLEARANCE), 2e-4),
            new Way(UnitParameter.pump(UnitProperty.FACE_GAP), 6e-5),
            new Way(UnitParameter.motor(UnitProperty.FACE_GAP), 6e-5),
            new Way(UnitParameter.pump(UnitProperty.CASE_SCORE_DEPTH), 2e-4),
            new Way(UnitParameter.motor(UnitProperty.SIDE_A_SCORE_DEPTH), 2e-4),
            new Way(UnitParameter.pump(UnitProperty.BRIDGE_SCORE_DEPTH), 2e-4),
            new Way(UnitParameter.motor(UnitProperty.BRIDGE_SCORE_DEPTH), 2e-4),
            new Way(LoopParameter.CHECK_A_LEAK, 3e-6),
            new Way(LoopParameter.CHECK_A_LIFT, 1),
            new Way(LoopParameter.BLEED_A, 2e-3),
            new Way(LoopParameter.CRACK_A, 3e-6),
            new Way(LoopParameter.CRACK_AB, 3e-6),
            new Way(LoopParameter.BYPASS_REST, 0.3));

    private final SteadySolver solver = new SteadySolver();
    private final SteadyPoint point = new SteadyPoint();

    /** Total loss of the high side A at pressures that stay the same. */
    @Test
    void aWiderWayNeverLeaksLess() {
        RandomCases cases = new RandomCases(SEED);
        for (int i = 0; i < DRIVES; i++) {
            double[] vector = cases.drive();
            double high = 1e6 + 3e7 * cases.random.nextDouble();
            double warmth = Oil.CELSIUS_ZERO + 110 * cases.random.nextDouble();
            for (Way way : WAYS) {
                double[] changed = vector.clone();
                neverFalls(way.toString(), width(vector, way), value -> {
                    changed[way.parameter().index()] = value;
                    return leak(changed, warmth, high);
                });
            }
        }
    }

    @Test
    void hotterOilNeverLeaksLess() {
        RandomCases cases = new RandomCases(SEED + 1);
        for (int i = 0; i < 4 * DRIVES; i++) {
            double[] vector = cases.ordinary().vector();
            double high = 1e6 + 3e7 * cases.random.nextDouble();
            neverFalls(
                    "oil temperature",
                    new double[] {253.15, 273.15, 293.15, 313.15, 333.15, 353.15, 373.15, 393.15},
                    warmth -> leak(vector, warmth, high));
        }
    }

    /** Warm, so that a wider gap's smaller drag does not outweigh its leak. */
    @Test
    void aWiderWayNeverClimbsFaster() {
        RandomCases cases = new RandomCases(SEED + 2);
        for (int i = 0; i < DRIVES; i++) {
            double[] vector = cases.drive();
            Duty climb = Duty.driving(
                            1,
                            Oil.CELSIUS_ZERO + 50 + 60 * cases.random.nextDouble(),
                            0.05 + 0.15 * cases.random.nextDouble())
                    .with(new InputState.Fixed(200 + 150 * cases.random.nextDouble()));
            for (Way way : WAYS) {
                double[] changed = vector.clone();
                neverFalls(way + ", " + climb, width(vector, way), value -> {
                    changed[way.parameter().index()] = value;
                    return -speed(changed, climb);
                });
            }
        }
    }

    /** While the ground holds: a machine that slides has no settled speed. */
    @Test
    void moreLoadNeverGoesFaster() {
        RandomCases cases = new RandomCases(SEED + 3);
        double[] pulls = {0, 50, 100, 200, 400, 600, 800, 1000, 1500};
        double[] slopes = {-0.25, -0.2, -0.1, -0.05, 0, 0.02, 0.05, 0.1, 0.15, 0.2, 0.25};
        for (int i = 0; i < 2 * DRIVES; i++) {
            RandomCases.Case next = cases.ordinary();
            double stroke = 0.1 + 0.9 * cases.random.nextDouble();
            Duty duty = Duty.driving(stroke, next.duty().oilTemperature(), 0);
            DoubleFunction<Duty> pulled = pull -> duty.with(new WheelState.Ground(0, pull));
            DoubleFunction<Duty> tilted = slope -> duty.with(new WheelState.Ground(slope, 0));
            neverFalls("pull, " + next, gripping(next, pulls, pulled), at -> -speed(next.vector(), pulled.apply(at)));
            neverFalls("slope, " + next, gripping(next, slopes, tilted), at -> -speed(next.vector(), tilted.apply(at)));
        }
    }

    private static double[] width(double[] vector, Way way) {
        double[] widths = new double[STEPS];
        double first = vector[way.parameter().index()];
        for (int i = 0; i < STEPS; i++) {
            widths[i] = first + (way.widest() - first) * i * i / ((STEPS - 1.0) * (STEPS - 1));
        }
        return widths;
    }

    /** Oil that leaves side A by every way but the chambers, at pressures high in A and 0.9 bar in B and gallery, m³/s. */
    private double leak(double[] vector, double warmth, double high) {
        solver.load(vector);
        solver.solve(Duty.driving(0, warmth, 0).with(new InputState.Off()).with(new WheelState.Held()));
        Balance balance = solver.balance;
        balance.unknown[Balance.A] = high;
        balance.unknown[Balance.B] = 9e4;
        balance.unknown[Balance.G] = 9e4;
        balance.evaluate();
        return -balance.residual[Balance.A];
    }

    private double speed(double[] vector, Duty duty) {
        solve(vector, duty);
        return point.groundSpeed();
    }

    private double[] gripping(RandomCases.Case next, double[] loads, DoubleFunction<Duty> duty) {
        return Arrays.stream(loads)
                .filter(load -> {
                    solve(next.vector(), duty.apply(load));
                    return !point.events().contains(Event.WHEELS_SPIN);
                })
                .toArray();
    }

    private void solve(double[] vector, Duty duty) {
        solver.load(vector);
        assertThat(solver.solve(duty)).as(duty.toString()).isTrue();
        point.fill(solver);
    }

    private static void neverFalls(String what, double[] at, DoubleFunction<Double> law) {
        double last = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < at.length; i++) {
            double next = law.apply(at[i]);
            assertThat(next)
                    .as(what + " up to " + at[i])
                    .isGreaterThanOrEqualTo(i == 0 ? last : last - ROUNDING * Math.abs(last));
            last = next;
        }
    }
}
