package swashlight.desk.work;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.Setup;

/** What can hurt somebody while a reading is taken; common practice, no source. */
enum Caution {
    RAISED("raised"),
    SLOPE("slope"),
    ROLLS("rolls"),
    BYPASS("bypass"),
    PULL("pull"),
    SHAFT("shaft"),
    PRESSURE("pressure"),
    HOT("hot"),
    DRIVEN("driven"),
    OPENED("opened"),
    ENGINE_OFF("engineOff");

    private static final double HOT_FROM = 328; // K, 55 °C: skin burns at a touch of some seconds
    private static final double LEVEL = 0.02; // rad

    private static final Set<ReadingKind> ROLLING = EnumSet.of(ReadingKind.ROLL_TIME, ReadingKind.ROLL_SPEED);
    private static final Set<ReadingKind> NEAR_SHAFTS =
            EnumSet.of(ReadingKind.INPUT_SPEED, ReadingKind.ENGINE_SPEED, ReadingKind.PUMP_TONE);
    private static final Set<ReadingKind> AT_GAUGES =
            EnumSet.of(ReadingKind.HIGH_PRESSURE, ReadingKind.GALLERY_PRESSURE);
    private static final Set<ReadingKind> AT_REST = EnumSet.of(
            ReadingKind.ROLL_TIME,
            ReadingKind.ROLL_SPEED,
            ReadingKind.PUSH_FORCE,
            ReadingKind.ARM_TRAVEL,
            ReadingKind.PART_DIMENSION);

    private final String key;

    Caution(String key) {
        this.key = key;
    }

    /** Its sentence in the catalogue; the same with {@code .short} for a table. */
    String words() {
        return "caution." + key;
    }

    /** The cautions of a reading, what is nearest to hurt first. */
    static List<Caution> of(ReadingKind kind, Setup setup) {
        List<Caution> all = new ArrayList<>();
        boolean lifted = setup.lifted()
                || (kind == ReadingKind.CREEP_SPEED && setup.slope().isEmpty());
        boolean rolls = ROLLING.contains(kind);
        boolean atRest = AT_REST.contains(kind);
        add(all, RAISED, lifted);
        add(all, ROLLS, rolls);
        add(all, SLOPE, !rolls && Math.abs(setup.slope().orElse(0)) > LEVEL);
        add(all, BYPASS, kind == ReadingKind.PUSH_FORCE);
        add(all, PULL, kind == ReadingKind.DRAWBAR_PULL);
        add(all, PRESSURE, AT_GAUGES.contains(kind));
        add(all, SHAFT, NEAR_SHAFTS.contains(kind));
        add(all, OPENED, kind == ReadingKind.PART_DIMENSION);
        add(all, ENGINE_OFF, kind == ReadingKind.ARM_TRAVEL);
        add(all, HOT, kind != ReadingKind.ARM_TRAVEL && setup.oilTemperature().orElse(0) > HOT_FROM);
        add(all, DRIVEN, !atRest && !lifted && !all.contains(SLOPE) && !all.contains(PULL));
        return all;
    }

    private static void add(List<Caution> all, Caution caution, boolean applies) {
        if (applies) {
            all.add(caution);
        }
    }
}
