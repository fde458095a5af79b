package swashlight.drive.oil;

import java.util.Optional;

/**
 * An engine-oil grade as written on the can: 10W, 30 or 10W-30.
 *
 * <p>Source: SAE J300, January 2015, table 1 (grade 40 behind 0W, 5W, 10W needs 3.5 mPa·s at high shear, else 3.7). Check:
 * {@code j300-hths}, {@code j300-kv100-min}, {@code j300-kv100-below}, {@code j300-band-width}.
 *
 * @param winter the part before the dash, if any
 * @param summer the part after it, if any
 */
public record EngineOilGrade(Optional<WinterGrade> winter, Optional<SummerGrade> summer) {
    private static final double LIGHT_FORTY = 3.5e-3; // Pa·s at high shear, 0W-40, 5W-40, 10W-40

    /** @throws IllegalArgumentException when both parts are missing */
    public EngineOilGrade {
        if (winter.isEmpty() && summer.isEmpty()) {
            throw new IllegalArgumentException("an engine-oil grade is written 10W, 30 or 10W-30");
        }
    }

    /** Reads 10W, 30 or 10W-30; empty when it is none of these. */
    public static Optional<EngineOilGrade> read(String text) {
        int dash = text.indexOf('-');
        Optional<WinterGrade> winter = winter(dash < 0 ? text : text.substring(0, dash));
        Optional<SummerGrade> summer = summer(text.substring(dash + 1));
        boolean whole = dash < 0 ? winter.isPresent() || summer.isPresent() : winter.isPresent() && summer.isPresent();
        return whole ? Optional.of(new EngineOilGrade(winter, summer)) : Optional.empty();
    }

    /** Least kinematic viscosity at 100 °C, m²/s. */
    public double leastViscosity100() {
        return Math.max(
                winter.map(WinterGrade::leastViscosity100).orElse(0.0),
                summer.map(SummerGrade::leastViscosity100).orElse(0.0));
    }

    /** Kinematic viscosity at 100 °C that it stays below, m²/s; empty for a W grade alone. */
    public Optional<Double> boundViscosity100() {
        return summer.map(SummerGrade::boundViscosity100);
    }

    /** Least viscosity at 150 °C under high shear, Pa·s; empty for a W grade alone. */
    public Optional<Double> highShearViscosity() {
        boolean light = winter.filter(w -> w.compareTo(WinterGrade.W10) <= 0).isPresent();
        return summer.map(s -> light && s == SummerGrade.S40 ? LIGHT_FORTY : s.highShearViscosity());
    }

    private static Optional<WinterGrade> winter(String label) {
        for (WinterGrade grade : WinterGrade.values()) {
            if (grade.label().equals(label)) {
                return Optional.of(grade);
            }
        }
        return Optional.empty();
    }

    private static Optional<SummerGrade> summer(String label) {
        for (SummerGrade grade : SummerGrade.values()) {
            if (grade.label().equals(label)) {
                return Optional.of(grade);
            }
        }
        return Optional.empty();
    }
}
