package swashlight.files.drive;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import swashlight.drive.description.OilParameter;
import swashlight.drive.description.Origin;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Quantity;

/**
 * What an oil of a grade usually is, as a convenience: two viscosities, marked typical.
 *
 * <p>Values: middle of common data sheets (common practice, no source), each inside what SAE J300 (January 2015) or ISO 3448:1992 allow its
 * grade. Spread of an ISO VG: its ± 10 % taken as even, so 10 %/√3 at 40 °C. Of an engine oil: the J300 band at 100 °C taken as even is
 * 6 to 9 %; at 40 °C, which J300 leaves open, 12 %.
 *
 * @param name as on the can
 * @param viscosity40 ν at 40 °C, m²/s
 * @param viscosity100 ν at 100 °C, m²/s
 * @param spread40 relative, one standard deviation, unit 1
 * @param spread100 relative, one standard deviation, unit 1
 */
public record OilGrade(String name, double viscosity40, double viscosity100, double spread40, double spread100) {
    private static final double ISO_SPREAD = 0.058; // 0.1/√3, unit 1
    private static final double ENGINE_SPREAD_COOL = 0.12; // unit 1
    private static final double ENGINE_SPREAD_WARM = 0.08; // unit 1

    private static final List<OilGrade> ALL = List.of(
            engine("SAE 20W-50", 165e-6, 18.5e-6),
            engine("SAE 15W-50", 125e-6, 18e-6),
            engine("SAE 10W-50", 115e-6, 18e-6),
            engine("SAE 5W-50", 108e-6, 18e-6),
            engine("SAE 15W-40", 108e-6, 14.5e-6),
            engine("SAE 10W-40", 95e-6, 14.3e-6),
            engine("SAE 5W-40", 84e-6, 14e-6),
            engine("SAE 10W-30", 68e-6, 10.6e-6),
            engine("SAE 5W-30", 62e-6, 10.6e-6),
            engine("SAE 20", 60e-6, 8.1e-6),
            engine("SAE 30", 98e-6, 11.2e-6),
            engine("SAE 40", 145e-6, 14.6e-6),
            engine("SAE 50", 210e-6, 18.8e-6),
            industrial("ISO VG 22", 22e-6, 4.3e-6),
            industrial("ISO VG 32", 32e-6, 5.4e-6),
            industrial("ISO VG 46", 46e-6, 6.8e-6),
            industrial("ISO VG 68", 68e-6, 8.7e-6),
            industrial("ISO VG 100", 100e-6, 11.3e-6),
            industrial("ISO VG 150", 150e-6, 14.8e-6),
            industrial("ISO VG 220", 220e-6, 19e-6));

    /** Every grade there is here. */
    public static List<OilGrade> all() {
        return ALL;
    }

    /** Without the body that sets it: 20W-50, VG 46. */
    public String shortName() {
        return name.substring(4);
    }

    /** The grades by every way to write them: SAE 20W-50 or 20W-50, ISO VG 46 or VG 46. */
    static Map<String, OilGrade> byName() {
        Map<String, OilGrade> names = new LinkedHashMap<>();
        for (OilGrade grade : ALL) {
            names.put(grade.name, grade);
        }
        for (OilGrade grade : ALL) {
            names.put(grade.shortName(), grade);
        }
        return names;
    }

    /** The viscosities as typical quantities. */
    Map<Parameter, Quantity> quantities() {
        return Map.of(
                OilParameter.VISCOSITY40,
                new Quantity(viscosity40, viscosity40 * spread40, Origin.TYPICAL),
                OilParameter.VISCOSITY100,
                new Quantity(viscosity100, viscosity100 * spread100, Origin.TYPICAL));
    }

    private static OilGrade engine(String name, double viscosity40, double viscosity100) {
        return new OilGrade(name, viscosity40, viscosity100, ENGINE_SPREAD_COOL, ENGINE_SPREAD_WARM);
    }

    private static OilGrade industrial(String name, double viscosity40, double viscosity100) {
        return new OilGrade(name, viscosity40, viscosity100, ISO_SPREAD, ISO_SPREAD);
    }
}
