package swashlight.findings.wear;

/**
 * The wear at which machines just reach what is required.
 *
 * <p>Below {@code wear().low()} nine in ten machines still reach it, above {@code wear().high()} one in ten; between, nobody can tell.
 *
 * @param wear SI unit of the part's kind; held to what a description can hold
 * @param beyond share of the machines that no wear of this part brings below, 1
 * @param without share of the machines that miss it with this part new, 1
 */
public record Limit(Span wear, double beyond, double without) {
    static final double ONE_IN = 0.1; // 1
    private static final double MOSTLY = 0.5; // 1

    /** Whether this part's wear decides at all: most machines have a limit. */
    public boolean decides() {
        return beyond < MOSTLY && without < MOSTLY;
    }

    static Limit of(double[] limits, double[] fresh, double[] most) {
        int beyond = 0;
        int without = 0;
        for (int m = 0; m < limits.length; m++) {
            beyond += limits[m] >= most[m] ? 1 : 0;
            without += limits[m] <= fresh[m] ? 1 : 0;
        }
        double count = limits.length;
        return new Limit(Span.of(limits, ONE_IN), beyond / count, without / count);
    }
}
