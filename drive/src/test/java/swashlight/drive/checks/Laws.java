package swashlight.drive.checks;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import swashlight.checks.CheckRow;

/** The laws behind the published values, by theme: plain Java, so that the JVM and a browser answer the same book. */
public final class Laws {
    private static final Map<String, ToDoubleFunction<CheckRow>> BY_THEME = Map.of(
            "oil", OilAnswers::answer,
            "kinematics", KinematicsAnswers::answer,
            "gap", GapAnswers::answer,
            "efficiency", EfficiencyAnswers::answer,
            "circuit", CircuitAnswers::answer,
            "vehicle", VehicleAnswers::answer,
            "heat", HeatAnswers::answer,
            "gear", GearAnswers::answer,
            "numerics", Laws::noLaw);

    private Laws() {}

    /** What answers the rows of a theme. */
    public static Map<String, ToDoubleFunction<CheckRow>> byTheme() {
        return BY_THEME;
    }

    private static double noLaw(CheckRow row) {
        throw new NoLaw(row);
    }
}
