package swashlight.drive.description;

import java.util.Map;

/**
 * What a rotating group of a given displacement usually looks like. Own scaling rules (common practice, no source), calibrated on
 * invented light drives: pistons 1.3 diameters apart on their circle, kidneys 0.45 and lands 0.16 diameters wide.
 */
final class TypicalUnit {
    private static final double PITCH_PER_DIAMETER = 1.3; // piston spacing ÷ diameter, 1
    private static final double KIDNEY_HALF_WIDTH = 0.225; // ÷ piston diameter, 1
    private static final double LAND_WIDTH = 0.16; // ÷ piston diameter, 1
    private static final double CHAMBER_FILL = 3; // mid chamber ÷ half stroke volume, 1 (hollow pistons)
    private static final double REFERENCE_DIAMETER = 0.016; // m

    private final Completion known;
    private final Place place;

    TypicalUnit(Completion known, Place place) {
        this.known = known;
        this.place = place;
    }

    /** Adds every sized number of this unit that is not known. */
    void complete(double usualDisplacement) {
        double displacement = displacement(usualDisplacement);
        double count = typical(UnitProperty.PISTON_COUNT, displacement < 13e-6 ? 5 : displacement < 30e-6 ? 7 : 9);
        double angle = angle(displacement, count);
        double tan = Math.tan(angle);
        double diameter;
        double pitch;
        if (has(UnitProperty.PISTON_DIAMETER)) {
            diameter = get(UnitProperty.PISTON_DIAMETER);
            pitch = typical(UnitProperty.PITCH_RADIUS, displacement / (2 * count * area(diameter) * tan));
        } else if (has(UnitProperty.PITCH_RADIUS)) {
            pitch = get(UnitProperty.PITCH_RADIUS);
            diameter = typical(
                    UnitProperty.PISTON_DIAMETER, Math.sqrt(displacement / (2 * count * Math.PI / 4 * pitch * tan)));
        } else {
            double cube = 4 * displacement / (count * count * PITCH_PER_DIAMETER * tan);
            diameter = typical(UnitProperty.PISTON_DIAMETER, Math.pow(cube, 1.0 / 3));
            pitch = typical(UnitProperty.PITCH_RADIUS, displacement / (2 * count * area(diameter) * tan));
        }
        double halfStroke = pitch * tan;
        typical(UnitProperty.CHAMBER_MID_VOLUME, CHAMBER_FILL * area(diameter) * halfStroke);
        typical(UnitProperty.ENGAGED_LENGTH, Math.max(1.4 * diameter, 1.6 * halfStroke));
        double inner = typical(UnitProperty.KIDNEY_INNER, pitch - KIDNEY_HALF_WIDTH * diameter);
        double outer = typical(UnitProperty.KIDNEY_OUTER, pitch + KIDNEY_HALF_WIDTH * diameter);
        typical(UnitProperty.LAND_INNER, inner - LAND_WIDTH * diameter);
        typical(UnitProperty.LAND_OUTER, outer + LAND_WIDTH * diameter);
        double scale = diameter / REFERENCE_DIAMETER;
        typical(UnitProperty.PORT_AREA, 0.4 * area(diameter));
        typical(UnitProperty.BLOCK_SPRING, 200 * scale * scale); // N, light class 100 … 400
        typical(UnitProperty.INERTIA, 3e-4 * Math.pow(scale, 5)); // kg·m²
    }

    private double displacement(double usual) {
        if (!has(UnitProperty.DISPLACEMENT) && geometryKnown()) {
            return known.give(
                    parameter(UnitProperty.DISPLACEMENT),
                    2
                            * get(UnitProperty.PISTON_COUNT)
                            * area(get(UnitProperty.PISTON_DIAMETER))
                            * get(UnitProperty.PITCH_RADIUS)
                            * Math.tan(get(UnitProperty.FULL_SWASH_ANGLE)));
        }
        return typical(UnitProperty.DISPLACEMENT, usual);
    }

    private double angle(double displacement, double count) {
        if (!has(UnitProperty.FULL_SWASH_ANGLE)
                && has(UnitProperty.PISTON_DIAMETER)
                && has(UnitProperty.PITCH_RADIUS)) {
            double tan = displacement
                    / (2 * count * area(get(UnitProperty.PISTON_DIAMETER)) * get(UnitProperty.PITCH_RADIUS));
            return typical(UnitProperty.FULL_SWASH_ANGLE, Math.atan(tan));
        }
        return typical(UnitProperty.FULL_SWASH_ANGLE, Math.toRadians(place == Place.PUMP ? 17 : 15));
    }

    private boolean geometryKnown() {
        return has(UnitProperty.PISTON_COUNT)
                && has(UnitProperty.PISTON_DIAMETER)
                && has(UnitProperty.PITCH_RADIUS)
                && has(UnitProperty.FULL_SWASH_ANGLE);
    }

    private UnitParameter parameter(UnitProperty property) {
        return new UnitParameter(place, property);
    }

    private boolean has(UnitProperty property) {
        return known.has(parameter(property));
    }

    private double get(UnitProperty property) {
        return known.get(parameter(property));
    }

    private double typical(UnitProperty property, double value) {
        return known.give(parameter(property), value);
    }

    private static double area(double diameter) {
        return Math.PI * diameter * diameter / 4;
    }

    /** The pump's and motor's usual displacement of a light drive, m³/rev. */
    static Map<Place, Double> usualDisplacements() {
        return Map.of(Place.PUMP, 7e-6, Place.MOTOR, 10e-6);
    }
}
