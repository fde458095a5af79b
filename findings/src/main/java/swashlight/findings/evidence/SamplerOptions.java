package swashlight.findings.evidence;

/**
 * How much work to put into proposing for one cause.
 *
 * @param severityNodes severities at which the machine is solved, 1
 * @param jacobianNodes severities at which its slopes are taken, 1
 * @param cells severities at which the linear answer is tabled, 1
 * @param corrections steps by which the linear answer is moved to where the readings want it, 1
 * @param defence share of draws taken from the prior, of severity and of unknowns each: it bounds every weight, 1
 * @param looseness variance of a reading in the linear answer over its own, at least 1; unit 1
 */
public record SamplerOptions(
        int severityNodes, int jacobianNodes, int cells, int corrections, double defence, double looseness) {
    public SamplerOptions {
        if (severityNodes < 2 || jacobianNodes < 1 || cells < 1 || corrections < 0) {
            throw new IllegalArgumentException("severity nodes " + severityNodes + ", slopes " + jacobianNodes
                    + ", cells " + cells + ", corrections " + corrections + ": at least 2, 1, 1 and 0");
        }
        if (!(defence > 0 && defence < 1) || !(looseness >= 1 && looseness < 100)) {
            throw new IllegalArgumentException(
                    "defence " + defence + ", looseness " + looseness + ": between 0 and 1, and at least 1");
        }
    }

    /** What a case on the desk gets. */
    public static SamplerOptions usual() {
        return new SamplerOptions(13, 3, 64, 1, 0.1, 1.2);
    }
}
