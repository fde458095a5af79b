package swashlight.findings.wear;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A part as measured.
 *
 * @param part which
 * @param value what the gauge showed (a spring: its shortening), SI unit of the part's kind
 * @param gauge how it errs
 * @param readings how many were averaged, 1
 * @param width of a score, m; empty: as described
 * @param form factor of the shape, 1
 * @param formSpread one standard deviation of it, 1
 */
public record Measured(
        WearPart part, double value, Gauge gauge, int readings, OptionalDouble width, double form, double formSpread) {
    /** @throws IllegalArgumentException when a number is not finite or negative where it cannot be */
    public Measured {
        if (!(Math.abs(value) < 1e9)
                || readings < 1
                || !(form > 0 && form < 100)
                || !(formSpread >= 0 && formSpread < 100)) {
            throw new IllegalArgumentException(part.key() + " measured as " + value + ", " + readings + " times, form "
                    + form + " ± " + formSpread);
        }
    }

    /** With the usual gauge and shape of its kind; value in the SI unit of the kind. */
    public static Measured usual(WearPart part, double value) {
        WearKind kind = part.kind();
        return new Measured(part, value, kind.gauge(), 1, OptionalDouble.empty(), kind.form(), kind.formSpread());
    }

    /**
     * Readings of one part with one gauge as one: their mean. Where they scatter more than the gauge does (the part is not round, or not worn
     * evenly), their own scatter counts.
     */
    public static Measured mean(List<Measured> same) {
        Measured first = same.get(0);
        int readings = 0;
        double sum = 0;
        for (Measured each : same) {
            readings += each.readings;
            sum += each.readings * each.value;
        }
        double mean = sum / readings;
        double square = 0;
        for (Measured each : same) {
            square += (each.value - mean) * (each.value - mean);
        }
        Gauge gauge = first.gauge;
        double scatter = same.size() > 2 ? Math.sqrt(square / (same.size() - 1)) : 0;
        if (scatter > gauge.scatter(mean)) {
            gauge = new Gauge(gauge.key(), scatter, 0, gauge.bias(), gauge.biasSpread());
        }
        return new Measured(first.part, mean, gauge, readings, first.width, first.form, first.formSpread);
    }

    /** Middle of what it really is, SI unit of the part's kind. */
    public double middle() {
        return value - gauge.bias();
    }

    /** Scatter of the mean of its readings, one standard deviation, SI unit of the part's kind. */
    public double scatter() {
        return gauge.scatter(value) / Math.sqrt(readings);
    }

    /** How well it is known, scatter and bias together, one standard deviation, SI unit of the part's kind. */
    public double uncertainty() {
        double scatter = scatter();
        return Math.sqrt(scatter * scatter + gauge.biasSpread() * gauge.biasSpread());
    }
}
