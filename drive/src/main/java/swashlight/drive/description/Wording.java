package swashlight.drive.description;

/** Plain sentences for complaints; other languages start from {@link Complaint#key()}. */
final class Wording {
    private Wording() {}

    static String of(String key, double given, double low, double high, String unit) {
        String range = high == Double.MAX_VALUE
                ? "at least " + low + " " + unit
                : low == high ? "for example " + low + " " + unit : "between " + low + " and " + high + " " + unit;
        return switch (key) {
            case "viscosity-rises" ->
                given + " " + unit + " at 100 °C is not thinner than at 40 °C; give a value " + range;
            case "torque-curve" ->
                given + " " + unit
                        + " does not fit the engine's torque curve (stall speed < peak-torque speed < governed range, peak torque ≥ "
                        + "rated torque); give a value " + range;
            case "radii-order" ->
                given + " " + unit + " does not lie outside the radius before it; give a value " + range;
            case "piston-leaves-bore" ->
                given + " " + unit + " lets the piston leave its bore at the end of the stroke; give a value " + range;
            case "chamber-too-small" ->
                given + " " + unit + " is less than the piston displaces; give a value " + range;
            case "displacement-geometry" ->
                given + " " + unit
                        + " does not follow from pistons, pitch radius and swash angle (2·N·A·R·tan α); give a value "
                        + range
                        + ", or leave out the displacement or the geometry";
            case "whole-number" -> given + " is not a whole number of pistons that can be; " + range;
            default -> given + " " + unit + " is outside its range; give a value " + range;
        };
    }
}
