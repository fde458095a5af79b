package swashlight.drive.description;

import java.util.ArrayList;
import java.util.List;

/** What must hold between the numbers of one drive. */
final class Consistency {
    /** Stated displacement and geometry may differ by this share: rounding of a nameplate, unit 1. */
    private static final double DISPLACEMENT_TOLERANCE = 0.03;

    private final DriveDescription drive;
    private final List<Complaint> complaints = new ArrayList<>();

    private Consistency(DriveDescription drive) {
        this.drive = drive;
    }

    static List<Complaint> complaints(DriveDescription drive) {
        Consistency check = new Consistency(drive);
        for (Parameter parameter : Parameters.all()) {
            check.demand(parameter, parameter.low(), parameter.high(), "out-of-range");
        }
        if (check.complaints.isEmpty()) {
            check.oil();
            check.engine();
            for (Place place : Place.values()) {
                check.unit(place);
            }
        }
        return check.complaints;
    }

    private void oil() {
        demand(
                OilParameter.VISCOSITY100,
                OilParameter.VISCOSITY100.low(),
                0.95 * drive.value(OilParameter.VISCOSITY40),
                "viscosity-rises");
    }

    private void engine() {
        demand(
                InputParameter.ENGINE_PEAK_TORQUE,
                drive.value(InputParameter.ENGINE_RATED_TORQUE),
                Double.MAX_VALUE,
                "torque-curve");
        double governedEnd = 1 - drive.value(InputParameter.ENGINE_DROOP);
        demand(InputParameter.ENGINE_PEAK_SPEED_SHARE, 0, governedEnd - 0.01, "torque-curve");
        demand(
                InputParameter.ENGINE_STALL_SPEED_SHARE,
                0,
                drive.value(InputParameter.ENGINE_PEAK_SPEED_SHARE),
                "torque-curve");
    }

    private void unit(Place place) {
        double radius = value(place, UnitProperty.LAND_INNER);
        for (UnitProperty next :
                List.of(UnitProperty.KIDNEY_INNER, UnitProperty.KIDNEY_OUTER, UnitProperty.LAND_OUTER)) {
            demand(new UnitParameter(place, next), radius * 1.001, Double.MAX_VALUE, "radii-order");
            radius = value(place, next);
        }
        double halfStroke =
                value(place, UnitProperty.PITCH_RADIUS) * Math.tan(value(place, UnitProperty.FULL_SWASH_ANGLE));
        double diameter = value(place, UnitProperty.PISTON_DIAMETER);
        double area = Math.PI * diameter * diameter / 4;
        double count = value(place, UnitProperty.PISTON_COUNT);
        double geometric = 2 * count * area * halfStroke;
        demand(
                new UnitParameter(place, UnitProperty.ENGAGED_LENGTH),
                halfStroke * 1.05,
                Double.MAX_VALUE,
                "piston-leaves-bore");
        demand(
                new UnitParameter(place, UnitProperty.CHAMBER_MID_VOLUME),
                area * halfStroke * 1.001,
                Double.MAX_VALUE,
                "chamber-too-small");
        demand(
                new UnitParameter(place, UnitProperty.DISPLACEMENT),
                geometric * (1 - DISPLACEMENT_TOLERANCE),
                geometric * (1 + DISPLACEMENT_TOLERANCE),
                "displacement-geometry");
        demand(
                new UnitParameter(place, UnitProperty.PISTON_COUNT),
                Math.floor(count),
                Math.floor(count),
                "whole-number");
        double idle = value(place, UnitProperty.IDLE_PISTONS);
        demand(
                new UnitParameter(place, UnitProperty.IDLE_PISTONS),
                Math.floor(idle),
                Math.min(Math.floor(idle), count - 1),
                "whole-number");
    }

    private double value(Place place, UnitProperty property) {
        return drive.value(new UnitParameter(place, property));
    }

    private void demand(Parameter parameter, double low, double high, String key) {
        double given = drive.value(parameter);
        if (!(given >= low && given <= high)) {
            complaints.add(new Complaint(
                    key,
                    parameter.key(),
                    given,
                    low,
                    high,
                    Wording.of(key, given, low, high, parameter.dimension().unit())));
        }
    }
}
