package swashlight.findings.wear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swashlight.drive.description.LoopParameter;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Place;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.gap.Orifice;

/**
 * One part that wears, with what its wear moves in the drive.
 *
 * @param key stable name: {@code pump-flatness}
 * @param kind what is measured on it
 * @param moved the number of the drive that follows
 * @param width the number that holds the width of a score
 */
public record WearPart(String key, WearKind kind, Parameter moved, Optional<Parameter> width) {
    /** Pressure of a seat test, Pa (own choice). */
    public static final double TEST_PRESSURE = 1e5;

    /** Density of kerosene, kg/m³ (handbook, from memory: 780 … 820). */
    public static final double TEST_DENSITY = 800;

    private static final double SPRING_SHARE = 0.05; // of the highest force, 1, own estimate

    private static final List<WearPart> ALL = list();

    /** All, pump first. */
    public static List<WearPart> all() {
        return ALL;
    }

    /** The part with a key. */
    public static Optional<WearPart> find(String key) {
        return ALL.stream().filter(part -> part.key.equals(key)).findFirst();
    }

    private static List<WearPart> list() {
        List<WearPart> all = new ArrayList<>();
        for (Place place : Place.values()) {
            all.add(of(place, WearKind.PISTON_PLAY, UnitProperty.BORE_CLEARANCE));
            all.add(of(place, WearKind.WORST_PISTON, UnitProperty.BAD_PISTON_CLEARANCE));
            all.add(of(place, WearKind.FLATNESS, UnitProperty.FACE_GAP));
            all.add(score(place, WearKind.FACE_SCORE, UnitProperty.CASE_SCORE_DEPTH, UnitProperty.CASE_SCORE_WIDTH));
            all.add(score(place, WearKind.SCORE_A, UnitProperty.SIDE_A_SCORE_DEPTH, UnitProperty.SIDE_A_SCORE_WIDTH));
            all.add(score(place, WearKind.SCORE_B, UnitProperty.SIDE_B_SCORE_DEPTH, UnitProperty.SIDE_B_SCORE_WIDTH));
            all.add(score(
                    place, WearKind.BRIDGE_SCORE, UnitProperty.BRIDGE_SCORE_DEPTH, UnitProperty.BRIDGE_SCORE_WIDTH));
            all.add(of(place, WearKind.SPRING, UnitProperty.BLOCK_SPRING));
        }
        all.add(new WearPart("make-up-valve-a", WearKind.SEAT_LEAK, LoopParameter.CHECK_A_LEAK, Optional.empty()));
        all.add(new WearPart("make-up-valve-b", WearKind.SEAT_LEAK, LoopParameter.CHECK_B_LEAK, Optional.empty()));
        return List.copyOf(all);
    }

    private static WearPart of(Place place, WearKind kind, UnitProperty moved) {
        return new WearPart(
                place.section() + "-" + kind.key(), kind, new UnitParameter(place, moved), Optional.empty());
    }

    private static WearPart score(Place place, WearKind kind, UnitProperty depth, UnitProperty width) {
        return new WearPart(
                place.section() + "-" + kind.key(),
                kind,
                new UnitParameter(place, depth),
                Optional.of(new UnitParameter(place, width)));
    }

    /** Pump or motor; empty for the valves. */
    public Optional<Place> place() {
        return moved instanceof UnitParameter unit ? Optional.of(unit.place()) : Optional.empty();
    }

    /** What the gauge would show on the part of a drive (values in index order, SI), SI unit of the kind. */
    public double fresh(double[] vector) {
        return switch (kind) {
            case PISTON_PLAY -> 2 * vector[moved.index()];
            case WORST_PISTON -> 2 * Math.max(vector[moved.index()], vector[bores().index()]);
            case SEAT_LEAK -> seatFlow(vector[moved.index()]);
            case FACE_SCORE, SCORE_A, SCORE_B, BRIDGE_SCORE -> vector[moved.index()];
            case FLATNESS, SPRING -> 0;
        };
    }

    /** Wears the part of a sound drive (values in index order, SI): wear in the SI unit of the kind, factor of its shape k, 1. */
    public void wear(double[] vector, double wear, double form) {
        int at = moved.index();
        double worn = switch (kind) {
            case PISTON_PLAY, WORST_PISTON -> wear / 2;
            case FLATNESS -> vector[at] + form * wear;
            case FACE_SCORE, SCORE_A, SCORE_B, BRIDGE_SCORE -> form * wear;
            case SEAT_LEAK -> form * wear / seatFlow(1);
            case SPRING -> vector[at];
        };
        vector[at] = Math.max(moved.low(), Math.min(moved.high(), worn));
    }

    /** The most wear that a description can hold, SI unit of the kind: where a search for a limit ends. */
    double most(double[] vector) {
        return switch (kind) {
            case PISTON_PLAY, WORST_PISTON -> 2 * moved.high();
            case FLATNESS -> moved.high() - vector[moved.index()];
            case FACE_SCORE, SCORE_A, SCORE_B, BRIDGE_SCORE -> moved.high();
            case SEAT_LEAK -> seatFlow(moved.high());
            case SPRING -> 0;
        };
    }

    /**
     * How well the usual gauge tells the number that follows from the part, one standard deviation: scatter, bias and shape.
     *
     * @param worn the number, SI unit of {@link #moved}
     * @param sound the same before any wear, SI unit of {@link #moved}
     */
    public double known(double worn, double sound) {
        Gauge gauge = kind.gauge();
        double form = kind.form();
        double shown = switch (kind) {
            case PISTON_PLAY, WORST_PISTON -> 2 * worn;
            case FLATNESS -> Math.max(0, worn - sound) / form;
            case FACE_SCORE, SCORE_A, SCORE_B, BRIDGE_SCORE -> worn / form;
            case SEAT_LEAK -> seatFlow(worn);
            case SPRING -> 0;
        };
        double scatter = gauge.scatter(shown);
        double read = Math.sqrt(scatter * scatter + gauge.biasSpread() * gauge.biasSpread());
        double shape = kind.formSpread() * shown;
        return switch (kind) {
            case PISTON_PLAY, WORST_PISTON -> read / 2;
            case FLATNESS, FACE_SCORE, SCORE_A, SCORE_B, BRIDGE_SCORE ->
                Math.sqrt(form * form * read * read + shape * shape);
            case SEAT_LEAK -> Math.sqrt(read * read + shape * shape) / seatFlow(1);
            case SPRING -> SPRING_SHARE * moved.high(); // a force is not told by a length, only whether it is broken
        };
    }

    private Parameter bores() {
        return new UnitParameter(place().orElseThrow(), UnitProperty.BORE_CLEARANCE);
    }

    /** Flow of the seat test through a leak area (m²), m³/s. */
    public static double seatFlow(double area) {
        return Orifice.flow(area, TEST_PRESSURE, TEST_DENSITY);
    }
}
