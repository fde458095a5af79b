package swashlight.drive.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Laws of the simplest loops on random cases; jqwik prints the fixed seed with any failure. */
final class LoopLawsTest {
    private static final String SEED = "20261125";

    @Property(seed = SEED)
    void theTorqueThatStallsIsTheTorqueOfTheStallPressure(
            @ForAll @Scale(14) @DoubleRange(min = 0.01, max = 1) double stroke,
            @ForAll @Scale(14) @DoubleRange(min = 1e-13, max = 1e-11) double leak) {
        LinearLoop loop = new LinearLoop(1.6e-6, 1.7e-6, leak);
        double torque = loop.stallPressure(300, stroke) * 1.7e-6;
        assertThat(loop.motorSpeed(300, stroke, torque)).isCloseTo(0, within(1e-9));
        assertThat(loop.motorSpeed(300, stroke, torque / 2))
                .isCloseTo(loop.motorSpeed(300, stroke, 0) / 2, within(1e-9));
    }

    @Property(seed = SEED)
    void strokeAndTorqueTheOtherWayMirror(
            @ForAll @Scale(14) @DoubleRange(min = 0, max = 1) double stroke,
            @ForAll @Scale(14) @DoubleRange(min = -50, max = 50) double torque) {
        LinearLoop loop = new LinearLoop(1.6e-6, 1.6e-6, 2e-12);
        assertThat(loop.motorSpeed(300, -stroke, -torque)).isEqualTo(-loop.motorSpeed(300, stroke, torque));
    }

    /** The tone solves its equation of motion: s² + 2 ζ ω s + ω² from the state matrix of pressure and speed. */
    @Property(seed = SEED)
    void toneAndDampingSolveTheEquationOfMotion(
            @ForAll @Scale(14) @DoubleRange(min = 1e-13, max = 1e-11) double leak,
            @ForAll @Scale(14) @DoubleRange(min = 0, max = 0.1) double drag) {
        OilSpring spring = new OilSpring(7e8, 1.6e-6, 5e-5, 0.004);
        double trace = -7e8 / 5e-5 * leak - drag / 0.004;
        double determinant = 7e8 / 5e-5 / 0.004 * (leak * drag + 1.6e-6 * 1.6e-6);
        double tone = spring.damped(leak, drag);
        assertThat(tone * tone).isCloseTo(determinant, withinPercentage(1e-9));
        assertThat(2 * spring.damping(leak, drag) * tone).isCloseTo(-trace, withinPercentage(1e-9));
    }

    @Property(seed = SEED)
    void withoutLeakOrDragItRingsForEver(
            @ForAll @Scale(14) @DoubleRange(min = 2e8, max = 2e9) double modulus,
            @ForAll @Scale(14) @DoubleRange(min = 1e-5, max = 1e-3) double volume) {
        OilSpring spring = new OilSpring(modulus, 1.6e-6, volume, 0.004);
        assertThat(spring.damped(0, 0)).isCloseTo(spring.oneSide(), withinPercentage(1e-10));
        assertThat(spring.damping(0, 0)).isZero();
        assertThat(spring.damping(1e-14, 1e-5)).isCloseTo(spring.dampingShort(1e-14, 1e-5), withinPercentage(1));
        assertThat(new OilSpring(2 * modulus, 1.6e-6, volume, 0.004).oneSide())
                .isCloseTo(spring.bothSides(), withinPercentage(1e-10));
    }
}
