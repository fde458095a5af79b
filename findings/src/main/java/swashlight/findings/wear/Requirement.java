package swashlight.findings.wear;

import java.util.List;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.Setup;
import swashlight.findings.reading.SetupDraft;

/**
 * What a machine must do.
 *
 * @param kind of performance
 * @param relative true when the bound is a share of what the drive as described does there
 * @param bound at least this (a roll: at most this), SI unit of the kind or a share, 1
 * @param slope positive when the front points uphill, rad
 * @param load drawbar pull while it drives, N
 * @param oilTemperature K
 * @param reverse driven in reverse
 */
public record Requirement(
        Kind kind, boolean relative, double bound, double slope, double load, double oilTemperature, boolean reverse) {
    private static final double HILL = 0.13962634015954636; // rad, 8° (own choice, no source)
    private static final double HOT = 353.15; // K, 80 °C
    private static final double SHARE = 0.85; // 1

    /** What is performed. */
    public enum Kind {
        SPEED("speed", ReadingKind.GROUND_SPEED, true),
        PULL("pull", ReadingKind.DRAWBAR_PULL, true),
        ROLL("roll", ReadingKind.ROLL_SPEED, false);

        private final String key;
        private final ReadingKind reading;
        private final boolean moreIsBetter;

        Kind(String key, ReadingKind reading, boolean moreIsBetter) {
            this.key = key;
            this.reading = reading;
            this.moreIsBetter = moreIsBetter;
        }

        /** Stable name. */
        public String key() {
            return key;
        }

        /** The reading that shows it. */
        public ReadingKind reading() {
            return reading;
        }

        /** False for a roll, which is to be slow. */
        public boolean moreIsBetter() {
            return moreIsBetter;
        }
    }

    /** @throws IllegalArgumentException when a number is outside its range */
    public Requirement {
        if (!(bound > 0 && bound < 1e6)
                || !(Math.abs(slope) <= 0.6)
                || !(load >= 0 && load <= 1e5)
                || !(oilTemperature >= 240 && oilTemperature <= 420)) {
            throw new IllegalArgumentException("requirement " + bound + " at slope " + slope + " rad, load " + load
                    + " N, oil " + oilTemperature + " K");
        }
    }

    /** 85 % of the described drive's speed up 8° with oil at 80 °C, forwards and backwards (own choice, no source). */
    public static List<Requirement> usual() {
        return List.of(
                new Requirement(Kind.SPEED, true, SHARE, HILL, 0, HOT, false),
                new Requirement(Kind.SPEED, true, SHARE, -HILL, 0, HOT, true));
    }

    /** How it is read, everything stated and exact. */
    Setup setup() {
        boolean rolls = kind == Kind.ROLL;
        double stroke = rolls ? 0 : reverse ? -1 : 1;
        SetupDraft draft = new SetupDraft()
                .stroke(stroke)
                .oil(oilTemperature)
                .slope(slope)
                .exactly()
                .backwards(rolls && slope > 0);
        if (!rolls) {
            draft.fullThrottle();
        }
        if (load > 0) {
            draft.load(load);
        }
        return draft.done();
    }
}
