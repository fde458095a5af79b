package swashlight.drive.checks;

import swashlight.checks.CheckRow;
import swashlight.drive.loop.LinearLoop;
import swashlight.drive.loop.OilSpring;

/** The law behind each row of theme {@code circuit}. */
final class CircuitAnswers {
    private static final double TURN = 2 * Math.PI; // rad

    private CircuitAnswers() {}

    static double answer(CheckRow row) {
        return switch (row.family()) {
            case "cylinder-spring" -> new OilSpring(row.si("K"), row.si("A"), row.si("V"), row.si("M")).bothSides();
            case "oil-spring-one-side" -> spring(row).oneSide();
            case "oil-spring-one-side-hertz" -> spring(row).oneSide() / TURN;
            case "oil-spring-both-sides" -> spring(row).bothSides();
            case "oil-spring-exact" -> spring(row).damped(row.si("Ct"), row.si("drag"));
            case "oil-spring-damping" -> spring(row).damping(row.si("Ct"), row.si("drag"));
            case "oil-spring-damping-short" -> spring(row).dampingShort(row.si("Ct"), row.si("drag"));
            case "steady-speed" -> loop(row).motorSpeed(row.si("n"), 1, row.si("T"));
            case "steady-pressure" -> loop(row).pressure(row.si("T"));
            case "stall-pressure" ->
                new LinearLoop(row.si("Vp") / TURN, row.si("Vp") / TURN, row.si("Ct"))
                        .stallPressure(row.si("n"), row.si("x"));
            default -> {
                if (row.family().startsWith("worked-climb-")) {
                    yield ClimbAnswers.answer(row);
                }
                throw new NoLaw(row);
            }
        };
    }

    private static OilSpring spring(CheckRow row) {
        return new OilSpring(row.si("K"), row.si("V") / TURN, row.si("volume"), row.si("J"));
    }

    private static LinearLoop loop(CheckRow row) {
        return new LinearLoop(row.si("Vp") / TURN, row.si("Vm") / TURN, row.si("Ct"));
    }
}
