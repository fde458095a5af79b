package swashlight.drive.checks;

import swashlight.checks.CheckRow;
import swashlight.drive.oil.ApiDensity;
import swashlight.drive.oil.EffectiveModulus;
import swashlight.drive.oil.EngineOilGrade;
import swashlight.drive.oil.Oil;
import swashlight.drive.oil.PressureViscosity;
import swashlight.drive.oil.ThermalProperties;
import swashlight.drive.oil.ViscosityGrade;
import swashlight.drive.oil.ViscosityIndex;
import swashlight.drive.oil.WaltherLine;

/** The law behind each row of theme {@code oil}: plain Java, so that JVM and browser run the same book. */
final class OilAnswers {
    private OilAnswers() {}

    static double answer(CheckRow row) {
        return switch (row.family()) {
            case "iso3448-mid" -> grade(row).midpoint();
            case "iso3448-min" -> grade(row).lowest();
            case "iso3448-max" -> grade(row).highest();
            case "oil-walther-a" -> line(row).intercept();
            case "oil-walther-b" -> line(row).slope();
            case "oil-walther" -> line(row).kinematicViscosity(row.si("T"));
            case "vi-of-limits" ->
                ViscosityIndex.ofReferences(row.si("nu40"), row.si("nu100"), row.si("L"), row.si("H"));
            case "vi" -> ViscosityIndex.reported(row.si("nu40"), row.si("nu100"));
            case "vi-l" -> ViscosityIndex.lowReference(row.si("nu100"));
            case "vi-h" -> ViscosityIndex.highReference(row.si("nu100"));
            case "oil-density-api-alpha" -> new ApiDensity(row.si("rho60")).expansion();
            case "oil-density-api" -> new ApiDensity(row.si("rho60")).at(row.si("T"));
            case "oil-density-linear" -> linear(row).density(row.si("T"));
            case "typical-density" -> Oil.mineral(46e-6, 6.8e-6).density15();
            case "typical-bulk-modulus" -> Oil.mineral(46e-6, 6.8e-6).bulkModulus40();
            case "oil-barus" -> barus(row);
            case "oil-barus-coefficient" -> PressureViscosity.coefficient(row.si("mu0"));
            case "oil-specific-heat" -> new ThermalProperties(row.si("s")).specificHeat(row.si("T"));
            case "oil-conductivity" -> new ThermalProperties(row.si("s")).conductivity(row.si("T"));
            case "oil-effective-modulus" ->
                new EffectiveModulus(row.si("share"), row.si("n"), row.si("B"), row.si("wall")).at(row.si("p"));
            case "oil-mixture" -> mixture(row);
            default -> engineOil(row);
        };
    }

    private static double engineOil(CheckRow row) {
        if (!row.family().startsWith("j300-")) {
            throw new NoLaw(row);
        }
        EngineOilGrade grade = EngineOilGrade.read(row.text("grade")).orElseThrow();
        return switch (row.family()) {
            case "j300-kv100-min" -> grade.leastViscosity100();
            case "j300-kv100-below" -> grade.boundViscosity100().orElseThrow();
            case "j300-band-width" -> grade.boundViscosity100().orElseThrow() / grade.leastViscosity100() - 1;
            case "j300-hths" -> grade.highShearViscosity().orElseThrow();
            case "j300-cranking" -> grade.winter().orElseThrow().crankingViscosity();
            case "j300-cranking-temperature" -> grade.winter().orElseThrow().crankingTemperature();
            case "j300-pumping" -> grade.winter().orElseThrow().pumpingViscosity();
            case "j300-pumping-temperature" -> grade.winter().orElseThrow().pumpingTemperature();
            default -> throw new NoLaw(row);
        };
    }

    private static ViscosityGrade grade(CheckRow row) {
        return ViscosityGrade.of((int) row.si("grade")).orElseThrow();
    }

    private static WaltherLine line(CheckRow row) {
        return WaltherLine.through(row.si("T1"), row.si("nu1"), row.si("T2"), row.si("nu2"));
    }

    private static Oil linear(CheckRow row) {
        return new Oil(46e-6, 6.8e-6, 1, row.si("rho15"), row.si("beta"), 1.7e-8, 1.5e9, 9, 0, 0, 1.4, 0);
    }

    private static double barus(CheckRow row) {
        Oil oil = new Oil(46e-6, 6.8e-6, 1, 870, 7e-4, row.si("b"), 1.5e9, 9, 0, 0, 1.4, 0);
        double gauge = row.si("p"); // Pa
        return oil.at(Oil.COOL_REFERENCE).dynamicViscosity(Oil.ATMOSPHERE + gauge)
                / oil.at(Oil.COOL_REFERENCE).dynamicViscosity();
    }

    /**
     * The rows speak of a liquid of constant modulus that does not shrink; the drive's liquid stiffens and shrinks with pressure. So
     * the drive's oil is given the K₀ that reaches the row's modulus at the row's pressure, and the air share that leaves the same
     * air beside the shrunken liquid: the same mixture, stated in the drive's terms.
     */
    private static double mixture(CheckRow row) {
        double slope = 2; // the least the drive's oil allows
        double pressure = row.si("p"); // Pa
        double base = row.si("Kl") - slope * pressure; // K₀, Pa
        double shrunk = Math.pow((base + slope * pressure) / (base + slope * Oil.ATMOSPHERE), -1 / slope);
        double share = row.si("x0") * shrunk / (1 - row.si("x0") + row.si("x0") * shrunk);
        Oil oil = new Oil(46e-6, 6.8e-6, 1, 870, 7e-4, 1.7e-8, base, slope, 0, share, row.si("kappa"), 0);
        return oil.at(Oil.COOL_REFERENCE).bulkModulus(pressure);
    }
}
