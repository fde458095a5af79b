package swashlight.findings.proof;

import java.util.Optional;
import swashlight.findings.expect.Comparison;
import swashlight.findings.reading.Reading;

/**
 * One reading after a repair, under the conditions of the one before.
 *
 * @param after as read
 * @param before as read; empty where nothing was read before that compares
 * @param common the reading under the conditions in which both are compared
 * @param shown after, brought there
 * @param beforeShown before, brought there; empty where there is none
 * @param good what good repairs show there
 * @param chance that the machine is no worse than one good repair in a hundred, 1
 * @param verdict pass, fail or cannot tell
 */
public record ProvedReading(
        Reading after,
        Optional<Reading> before,
        Comparison common,
        Figure shown,
        Optional<Figure> beforeShown,
        Band good,
        double chance,
        ProofVerdict verdict) {
    /**
     * A number and how well it is known.
     *
     * @param value SI unit of the comparison
     * @param error one standard deviation, SI unit of the comparison: instrument, conditions and correction
     */
    public record Figure(double value, double error) {}

    /** After less before; the error counts both as independent, which a slope that both share makes too wide. */
    public Optional<Figure> gain() {
        return beforeShown.map(first -> new Figure(
                shown.value() - first.value(),
                Math.sqrt(shown.error() * shown.error() + first.error() * first.error())));
    }
}
