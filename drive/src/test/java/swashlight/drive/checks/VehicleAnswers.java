package swashlight.drive.checks;

import swashlight.checks.CheckRow;
import swashlight.drive.description.InputParameter;
import swashlight.drive.machine.SoilTraction;
import swashlight.drive.machine.SoilTyre;
import swashlight.drive.steady.SteadyAnswers;

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
            case "grade-force" ->
                SteadyAnswers.machine(row.si("m") * row.si("g")).gradeForce(slope(row));
            case "grade-angle" -> Math.asin(SteadyAnswers.machine(1).gradeForce(slope(row)));
            case "belt-slip" ->
                SteadyAnswers.engine(row.si("n"))
                        .set(InputParameter.BELT_SPEED_RATIO, row.si("d1") / row.si("d2"))
                        .set(InputParameter.BELT_CAPACITY, 50)
                        .set(InputParameter.BELT_CREEP, 0.012)
                        .shaftSpeed(row.si("slip"));
            case "governor-droop-speed" -> loaded(row, row.si("droop"));
            case "governor-droop-of-no-load" -> droop(row);
            default -> throw new NoLaw(row);
        };
    }

    private static double mobility(CheckRow row) {
        return new SoilTyre(row.si("b"), row.si("d"), row.si("deflection")).mobility(row.si("CI"), row.si("W"));
    }

    private static double slope(CheckRow row) {
        return Math.atan(row.si("grade"));
    }

    private static double loaded(CheckRow row, double droop) {
        return SteadyAnswers.engine(row.si("n0"))
                .set(InputParameter.ENGINE_DROOP, droop)
                .ratedSpeed();
    }

    /** The droop with which the engine falls to the row's speed at rated torque, found by halving. */
    private static double droop(CheckRow row) {
        double low = 0.001;
        double high = 0.3;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (loaded(row, middle) > row.si("n1")) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
