package swashlight.drive.checks;

import swashlight.checks.CheckRow;
import swashlight.drive.heat.Cooling;
import swashlight.drive.heat.FilmAir;
import swashlight.drive.heat.FreeConvection;
import swashlight.drive.heat.HeatLump;
import swashlight.drive.heat.Radiation;
import swashlight.drive.heat.ThrottleHeat;

/** The law behind each row of theme {@code heat}. */
final class HeatAnswers {
    private HeatAnswers() {}

    static double answer(CheckRow row) {
        return switch (row.family()) {
            case "throttle-rise" -> rise(row);
            case "throttle-outlet" -> row.si("T") + rise(row);
            case "system-heat-pump" -> pumpHeat(row);
            case "system-heat-relief" -> reliefHeat(row);
            case "system-heat-line" -> lineHeat(row);
            case "system-heat-total" -> pumpHeat(row) + reliefHeat(row) + lineHeat(row);
            case "air-film" -> FreeConvection.inAir(row.si("C"), row.si("L"), row.si("dT"));
            case "radiation-film" -> Radiation.film(row.si("emissivity"), row.si("Ts"), row.si("Ta"));
            case "lump-rise" -> lump(row).restingRise(row.si("P"));
            case "lump-capacity" -> lump(row).capacity();
            case "lump-time" -> new Cooling(lump(row).capacity(), lump(row).conductance(), 0, 0).timeConstant(0);
            case "lump-temperature" -> row.si("T0") + lump(row).rise(0, row.si("P"), row.si("t"));
            default -> plate(row);
        };
    }

    private static double plate(CheckRow row) {
        if (!row.family().startsWith("vertical-plate-")) {
            throw new NoLaw(row);
        }
        FilmAir air = new FilmAir(row.si("nu"), row.si("a"), row.si("k"), row.si("Pr"), row.si("beta"));
        double difference = row.si("Ts") - row.si("Ta"); // K
        double rayleigh = FreeConvection.rayleigh(air, row.si("L"), difference);
        double film = FreeConvection.film(air, row.si("L"), difference);
        return switch (row.family()) {
            case "vertical-plate-rayleigh" -> rayleigh;
            case "vertical-plate-nusselt" -> FreeConvection.nusselt(air, rayleigh);
            case "vertical-plate-film" -> film;
            case "vertical-plate-heat" -> film * row.si("L") * row.si("width") * difference;
            default -> throw new NoLaw(row);
        };
    }

    private static HeatLump lump(CheckRow row) {
        double capacity = row.si("steel") * row.si("csteel") + row.si("oil") * row.si("coil"); // J/K
        return new HeatLump(capacity, row.si("h") * row.si("A"));
    }

    private static double rise(CheckRow row) {
        return ThrottleHeat.rise(row.si("dp"), row.si("rho"), row.si("c"));
    }

    private static double pumpHeat(CheckRow row) {
        double out = ThrottleHeat.power(row.si("Q"), row.si("dp")); // W
        return out / row.si("pump") - out;
    }

    private static double reliefHeat(CheckRow row) {
        return row.si("share") * ThrottleHeat.power(row.si("Q"), row.si("dp"));
    }

    private static double lineHeat(CheckRow row) {
        return (1 - row.si("share")) * ThrottleHeat.power(row.si("Q"), row.si("line") * row.si("dp"));
    }
}
