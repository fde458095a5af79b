package swashlight.drive.checks;

import swashlight.checks.CheckRow;
import swashlight.drive.machine.SoilTraction;
import swashlight.drive.machine.SoilTyre;

/** The law behind each row of theme {@code vehicle}. */
final class VehicleAnswers {
    private VehicleAnswers() {}

    static double answer(CheckRow row) {
        return switch (row.family()) {
            case "soil-mobility" -> mobility(row);
            case "soil-rolling" -> new SoilTraction(mobility(row)).rolling(row.si("slip"));
            case "soil-gross" -> new SoilTraction(mobility(row)).gross(row.si("slip"));
            case "soil-net" -> new SoilTraction(mobility(row)).net(row.si("slip"));
            case "soil-efficiency" -> new SoilTraction(mobility(row)).efficiency(row.si("slip"));
            case "brixius-rolling" -> new SoilTraction(row.si("Bn")).rolling(row.si("slip"));
            case "brixius-gross" -> new SoilTraction(row.si("Bn")).gross(row.si("slip"));
            case "brixius-net" -> new SoilTraction(row.si("Bn")).net(row.si("slip"));
            case "brixius-efficiency" -> new SoilTraction(row.si("Bn")).efficiency(row.si("slip"));
            default -> throw new NoLaw(row);
        };
    }

    private static double mobility(CheckRow row) {
        return new SoilTyre(row.si("b"), row.si("d"), row.si("deflection")).mobility(row.si("CI"), row.si("W"));
    }
}
