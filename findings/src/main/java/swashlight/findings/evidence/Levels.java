package swashlight.findings.evidence;

import java.util.List;
import swashlight.findings.cause.SeverityPrior;
import swashlight.findings.fit.NormalLaw;

/**
 * The severities of a cause. Of graded faults each is one more unknown, a standard normal number, s = F⁻¹(Φ(u)); a fault in whole pieces has
 * a stratum for each count instead; a sound machine has neither.
 */
final class Levels {
    private final List<SeverityPrior> graded;
    private final SeverityPrior counted;
    private final double[] pieces; // severities, own unit

    Levels(List<SeverityPrior> priors) {
        boolean whole = priors.size() == 1 && priors.get(0).inSteps();
        graded = whole ? List.of() : List.copyOf(priors);
        counted = whole ? priors.get(0) : new SeverityPrior.Whole(0);
        pieces = whole ? counted.ladder(1) : new double[0];
    }

    /** How many unknowns say how severe. */
    int unknowns() {
        return graded.size();
    }

    /** How many strata. */
    int count() {
        return Math.max(1, pieces.length);
    }

    /** Prior share of a stratum, 1. */
    double weight(int stratum) {
        if (pieces.length == 0) {
            return 1;
        }
        return counted.below(pieces[stratum]) - (stratum > 0 ? counted.below(pieces[stratum - 1]) : 0);
    }

    /** Severities, own units, at x, whose first numbers they are. */
    double[] severity(int stratum, double[] x) {
        if (pieces.length > 0) {
            return new double[] {pieces[stratum]};
        }
        double[] severity = new double[graded.size()];
        for (int p = 0; p < severity.length; p++) {
            severity[p] = graded.get(p).severity(NormalLaw.below(x[p]));
        }
        return severity;
    }
}
