package swashlight.findings.evidence;

import swashlight.findings.cause.SeverityPrior;
import swashlight.findings.fit.NormalLaw;

/**
 * The severities of a cause as strata: a graded cause has one, in which a standard normal number says how severe, s = F⁻¹(Φ(u)), so that
 * severity is one more unknown like all others; a cause in whole pieces has one for each count.
 */
final class Levels {
    private final SeverityPrior prior;
    private final double[] pieces; // severities, own unit
    private final boolean graded;

    Levels(SeverityPrior prior) {
        this.prior = prior;
        graded = !prior.inSteps();
        pieces = graded ? new double[] {prior.severity(0.5)} : prior.ladder(1);
    }

    /** How many strata. */
    int count() {
        return pieces.length;
    }

    /** True when the number u says how severe. */
    boolean graded() {
        return graded;
    }

    /** Prior share of a stratum, 1. */
    double weight(int stratum) {
        if (graded) {
            return 1;
        }
        return prior.below(pieces[stratum]) - (stratum > 0 ? prior.below(pieces[stratum - 1]) : 0);
    }

    /** Severity in the cause's own unit, for u (1). */
    double severity(int stratum, double u) {
        return graded ? prior.severity(NormalLaw.below(u)) : pieces[stratum];
    }
}
