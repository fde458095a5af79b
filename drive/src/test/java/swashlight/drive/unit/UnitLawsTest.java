package swashlight.drive.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** Laws of whole units on random cases; jqwik prints the fixed seed with any failure. */
final class UnitLawsTest {
    private static final String SEED = "20261125";
    private static final WorkingFluid FLUID = new WorkingFluid(0.028, 870, 1.7e9);
    private static final LossModel MODEL = new LossModel(107e-6, 4.26e-9, 1e-6, 23500, 0.0537, 53.6);

    /** Against the plain slow way: add up the sines. */
    @Property(seed = SEED, tries = 30)
    void rippleIsWhatAddingUpTheSinesGives(@ForAll @IntRange(min = 3, max = 15) int pistons) {
        FlowRipple ripple = new FlowRipple(pistons);
        int steps = 1440 * pistons;
        double least = Double.MAX_VALUE;
        double greatest = 0;
        double sum = 0;
        double cosine = 0;
        for (int i = 0; i < steps; i++) {
            double angle = 2 * Math.PI * i / steps;
            double flow = sines(pistons, angle);
            least = Math.min(least, flow);
            greatest = Math.max(greatest, flow);
            sum += flow;
            cosine += flow * Math.cos(ripple.cyclesPerTurn() * (angle - Math.PI / 2));
        }
        double mean = sum / steps;
        assertThat(mean).isCloseTo(ripple.meanSum(), withinPercentage(1e-4));
        assertThat(greatest).isCloseTo(ripple.greatestSum(), withinPercentage(1e-4));
        assertThat(least).isCloseTo(ripple.leastSum(), withinPercentage(1e-4));
        assertThat((greatest - least) / mean).isCloseTo(ripple.overMean(), within(1e-6));
        assertThat(2 * Math.abs(cosine) / steps / mean)
                .isCloseTo(ripple.harmonic(ripple.cyclesPerTurn()), within(1e-6));
        assertThat(ripple.harmonic(ripple.cyclesPerTurn() + 1)).isZero();
    }

    /** An odd number of pistons ripples like twice as many: that is why it is odd. */
    @Property(seed = SEED)
    void anOddNumberRipplesLikeTwiceAsMany(@ForAll @IntRange(min = 1, max = 10) int half) {
        int odd = 2 * half + 1;
        assertThat(new FlowRipple(odd).overMean()).isEqualTo(new FlowRipple(2 * odd).overMean());
        assertThat(new FlowRipple(odd).cyclesPerTurn()).isEqualTo(new FlowRipple(2 * odd).cyclesPerTurn());
    }

    @Property(seed = SEED)
    void swashTheOtherWayMirrors(@ForAll @Scale(14) @DoubleRange(min = 0, max = 0.35) double angle) {
        PistonGroup group = new PistonGroup(9, 0.015, 0.025);
        assertThat(group.displacement(-angle)).isEqualTo(-group.displacement(angle));
        assertThat(group.swashAngle(group.displacement(angle))).isCloseTo(angle, within(1e-14));
    }

    @Property(seed = SEED)
    void realUnitsStayBelowIdealOnes(
            @ForAll @Scale(14) @DoubleRange(min = 0.2, max = 1) double share,
            @ForAll @Scale(14) @DoubleRange(min = 5e6, max = 3e7) double pressure,
            @ForAll @Scale(14) @DoubleRange(min = 80, max = 350) double speed) {
        RunningPoint point = new RunningPoint(share, pressure, speed);
        Efficiency pump = MODEL.asPump(point, FLUID);
        Efficiency motor = MODEL.asMotor(point, FLUID);
        assertThat(pump.overall()).isLessThan(1);
        assertThat(motor.overall()).isLessThan(1);
        assertThat(pump.then(motor).overall()).isCloseTo(pump.overall() * motor.overall(), withinPercentage(1e-10));
        // the same leak weighs more on a pump, the same drag more on a motor: 1 − x ≤ 1/(1 + x)
        assertThat(pump.volumetric()).isLessThanOrEqualTo(motor.volumetric());
        assertThat(motor.hydromechanical()).isLessThanOrEqualTo(pump.hydromechanical());
    }

    @Property(seed = SEED)
    void thickerOilLeaksLessAndDragsMore(
            @ForAll @Scale(14) @DoubleRange(min = 0.005, max = 0.2) double viscosity,
            @ForAll @Scale(14) @DoubleRange(min = 1e6, max = 3e7) double pressure) {
        RunningPoint point = new RunningPoint(1, pressure, 200);
        WorkingFluid thin = new WorkingFluid(viscosity, 870, 1.7e9);
        WorkingFluid thick = new WorkingFluid(viscosity * 1.1, 870, 1.7e9);
        assertThat(MODEL.flowLoss(point, thick)).isLessThan(MODEL.flowLoss(point, thin));
        assertThat(MODEL.torqueLoss(point, thick)).isGreaterThan(MODEL.torqueLoss(point, thin));
    }

    /** Energy: what goes in comes out as power, as lost flow times pressure and as lost torque times speed. */
    @Property(seed = SEED)
    void powerInIsPowerOutAndLosses(
            @ForAll @Scale(14) @DoubleRange(min = 0.3, max = 1) double share,
            @ForAll @Scale(14) @DoubleRange(min = 1e6, max = 3e7) double pressure) {
        RunningPoint point = new RunningPoint(share, pressure, 200);
        IdealUnit ideal = new IdealUnit(share * 107e-6, 200, pressure);
        double in = MODEL.asPump(point, FLUID).pumpTorque(ideal) * 200;
        double out = MODEL.asPump(point, FLUID).pumpFlow(ideal) * pressure;
        double lost = MODEL.flowLoss(point, FLUID) * pressure + MODEL.torqueLoss(point, FLUID) * 200;
        assertThat(in - out).isCloseTo(lost, withinPercentage(1e-9));
    }

    @Property(seed = SEED)
    void wilsonsBestPointIsTheBest(
            @ForAll @Scale(14) @DoubleRange(min = 5e-9, max = 2e-7) double slip,
            @ForAll @Scale(14) @DoubleRange(min = 0, max = 0.3) double coulomb,
            @ForAll @Scale(14) @DoubleRange(min = 5e4, max = 3e5) double viscous,
            @ForAll @Scale(14) @DoubleRange(min = 0.2, max = 5) double elsewhere) {
        WilsonModel model = new WilsonModel(slip, coulomb, viscous);
        double best = model.at(model.bestSigma()).overall();
        assertThat(model.at(model.bestSigma() * elsewhere).overall()).isLessThanOrEqualTo(best + 1e-15);
    }

    private static double sines(int pistons, double angle) {
        double sum = 0;
        for (int k = 0; k < pistons; k++) {
            sum += Math.max(0, Math.sin(angle + 2 * Math.PI * k / pistons));
        }
        return sum;
    }
}
