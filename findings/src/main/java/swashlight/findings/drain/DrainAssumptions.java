package swashlight.findings.drain;

import java.util.List;
import swashlight.drive.oil.Oil;

/**
 * What a drain fit takes from outside its rows, each with its spread.
 *
 * @param oil the grade taken
 * @param otherOils grades it might be as well; the largest change any of them makes is counted as one standard deviation
 * @param meterStart flow at which the drain meter starts, m³/s, above 0
 * @param meterStartSpread its standard deviation, m³/s
 * @param deliveryZero what the delivery meter shows at standstill, m³/s
 * @param gapShare where the gap temperature lies between outlet (0) and case drain (1), 1
 * @param gapShareSpread its standard deviation, 1
 * @param repeatability how far one run's leak may stand off another's at equal conditions, as a share, 1
 * @param referencePressure where conductance and ratio are stated, Pa
 * @param referenceTemperature where the reference viscosity is taken, K
 */
public record DrainAssumptions(
        Oil oil,
        List<Oil> otherOils,
        double meterStart,
        double meterStartSpread,
        double deliveryZero,
        double gapShare,
        double gapShareSpread,
        double repeatability,
        double referencePressure,
        double referenceTemperature) {
    /** m³/s in one L/min (definition of the litre and the minute). */
    static final double LITRE_PER_MINUTE = 1e-3 / 60;

    /** Keeps its own copy of the grades. */
    public DrainAssumptions {
        otherOils = List.copyOf(otherOils);
        if (!(meterStart > 0 && meterStartSpread >= 0 && meterStartSpread < meterStart)) {
            throw new IllegalArgumentException("meter start is " + meterStart + " ± " + meterStartSpread
                    + " m³/s; the start must be above 0 and above its spread");
        }
        if (!(gapShareSpread >= 0 && repeatability >= 0 && referencePressure > 0)) {
            throw new IllegalArgumentException(
                    "spreads must not be negative and the reference pressure must be above 0");
        }
    }

    /**
     * What is known of the piston-pump set: meter start 0.63 L/min and delivery zero −0.54 L/min (its SOURCE.md), grade 46
     * assumed with 32 and 68 as alternatives, gap at the case-drain temperature with a third of the way to the outlet as
     * spread, runs repeating within 2.5 % (the widest class of flow-meter error of ISO 4409, from memory).
     */
    public static DrainAssumptions usual() {
        return new DrainAssumptions(
                Oil.mineral(46e-6, 6.8e-6),
                List.of(Oil.mineral(32e-6, 5.4e-6), Oil.mineral(68e-6, 8.7e-6)),
                0.63 * LITRE_PER_MINUTE,
                0.05 * LITRE_PER_MINUTE,
                -0.54 * LITRE_PER_MINUTE,
                1,
                1.0 / 3,
                0.025,
                1e7,
                Oil.CELSIUS_ZERO + 50);
    }

    /** The same with nothing uncertain but the rows themselves. */
    public DrainAssumptions certain() {
        return new DrainAssumptions(
                oil, List.of(), meterStart, 0, deliveryZero, gapShare, 0, 0, referencePressure, referenceTemperature);
    }

    /** The same with another oil. */
    DrainAssumptions with(Oil another) {
        return new DrainAssumptions(
                another,
                List.of(),
                meterStart,
                meterStartSpread,
                deliveryZero,
                gapShare,
                gapShareSpread,
                repeatability,
                referencePressure,
                referenceTemperature);
    }

    /** The same with the meter starting at another flow. */
    DrainAssumptions startingAt(double flow) {
        return new DrainAssumptions(
                oil,
                otherOils,
                flow,
                meterStartSpread,
                deliveryZero,
                gapShare,
                gapShareSpread,
                repeatability,
                referencePressure,
                referenceTemperature);
    }

    /** The same with the gap temperature elsewhere. */
    DrainAssumptions gapAt(double share) {
        return new DrainAssumptions(
                oil,
                otherOils,
                meterStart,
                meterStartSpread,
                deliveryZero,
                share,
                gapShareSpread,
                repeatability,
                referencePressure,
                referenceTemperature);
    }
}
