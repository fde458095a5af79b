package swashlight.files.drive;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Origin;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.drive.description.Place;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;

/** How much is known of a drive. It follows from the origins of its numbers; a file may state it, and is then held to it. */
public enum DriveLevel {
    /** A label and a tape measure: the rest is typical. */
    NAMEPLATE,
    /** Also readings of a known good machine: some numbers are fitted. */
    BASELINE,
    /** The whole geometry of both rotating groups. */
    ENGINEERING;

    private static final List<UnitProperty> GEOMETRY = List.of(
            UnitProperty.PISTON_COUNT,
            UnitProperty.PISTON_DIAMETER,
            UnitProperty.PITCH_RADIUS,
            UnitProperty.FULL_SWASH_ANGLE,
            UnitProperty.BORE_CLEARANCE,
            UnitProperty.ENGAGED_LENGTH,
            UnitProperty.FACE_GAP,
            UnitProperty.LAND_INNER,
            UnitProperty.KIDNEY_INNER,
            UnitProperty.KIDNEY_OUTER,
            UnitProperty.LAND_OUTER);

    /** Word in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The highest level a drive's numbers bear out. */
    public static DriveLevel of(DriveDescription drive) {
        if (ENGINEERING.missing(drive).isEmpty()) {
            return ENGINEERING;
        }
        return BASELINE.missing(drive).isEmpty() ? BASELINE : NAMEPLATE;
    }

    /** What a drive lacks for this level. */
    public List<String> missing(DriveDescription drive) {
        return switch (this) {
            case NAMEPLATE -> List.of();
            case BASELINE ->
                Parameters.all().stream()
                                .anyMatch(parameter -> drive.quantity(parameter).origin() == Origin.FITTED)
                        ? List.of()
                        : List.of("a number with origin: fitted");
            case ENGINEERING ->
                Arrays.stream(Place.values())
                        .flatMap(place -> GEOMETRY.stream().map(property -> new UnitParameter(place, property)))
                        .filter(parameter -> drive.quantity(parameter).origin() == Origin.TYPICAL)
                        .map(Parameter::key)
                        .toList();
        };
    }

    static Map<String, DriveLevel> words() {
        Map<String, DriveLevel> words = new LinkedHashMap<>();
        for (DriveLevel level : values()) {
            words.put(level.word(), level);
        }
        return words;
    }
}
