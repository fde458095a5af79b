package swashlight.findings.evidence;

/**
 * How much work to put into proposing for one cause.
 *
 * @param looks severities at which the machine is solved for a first look, 1
 * @param steps towards the likeliest machine, with borrowed slopes and again with own ones, 1
 * @param defence share of draws taken from the prior: it bounds every weight, 1
 * @param looseness variance of a reading in the linear answer over its own, at least 1; unit 1
 */
public record SamplerOptions(int looks, int steps, double defence, double looseness) {
    public SamplerOptions {
        if (looks < 2 || steps < 0) {
            throw new IllegalArgumentException("looks " + looks + ", steps " + steps + ": at least 2 and 0");
        }
        if (!(defence > 0 && defence < 1) || !(looseness >= 1 && looseness < 100)) {
            throw new IllegalArgumentException(
                    "defence " + defence + ", looseness " + looseness + ": between 0 and 1, and at least 1");
        }
    }

    /** What a case on the desk gets. */
    public static SamplerOptions usual() {
        return new SamplerOptions(14, 6, 0.1, 1.2);
    }
}
