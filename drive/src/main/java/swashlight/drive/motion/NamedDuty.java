package swashlight.drive.motion;

import java.util.Optional;
import swashlight.drive.oil.Oil;
import swashlight.drive.steady.InputState;

/** Duties that show what a drive is like; times and slopes are our own choice of the usual. */
public enum NamedDuty {
    LAUNCH("launch", "from rest to full speed on level ground, pedal down within 0.6 s"),
    REVERSE("reverse", "from full speed forward to full speed in reverse, pedal over within 0.8 s"),
    HILL("hill", "at full speed from level ground onto a slope of 10°"),
    HOLD("hold", "in neutral with the engine running on a slope of 8°, no brake"),
    BYPASS_PUSH("bypass-push", "engine off, pushed to 0.6 m/s with the bypass open, then the bypass is let go"),
    COLD_START("cold-start", "engine speeds up in oil of −10 °C, then from rest to full speed");

    private static final double WARM = Oil.CELSIUS_ZERO + 60; // K
    private static final double COLD = Oil.CELSIUS_ZERO - 10; // K

    private final String key;
    private final String meaning;

    NamedDuty(String key, String meaning) {
        this.key = key;
        this.meaning = meaning;
    }

    /** Stable name: {@code bypass-push}. */
    public String key() {
        return key;
    }

    /** One plain line. */
    public String meaning() {
        return meaning;
    }

    /** The duty of a name. */
    public static Optional<NamedDuty> find(String key) {
        for (NamedDuty duty : values()) {
            if (duty.key.equals(key)) {
                return Optional.of(duty);
            }
        }
        return Optional.empty();
    }

    /** What is done, from where, for how long. */
    public MotionPlan plan() {
        return switch (this) {
            case LAUNCH ->
                new MotionPlan(MotionDuty.driving(through(0.2, 0, 0.8, 1), 0, WARM), MotionStart.AT_REST, 2.5);
            case REVERSE ->
                new MotionPlan(MotionDuty.driving(through(0.5, 1, 1.3, -1), 0, WARM), MotionStart.SETTLED, 3);
            case HILL ->
                new MotionPlan(
                        MotionDuty.driving(Timeline.constant(1), 0, WARM)
                                .change()
                                .slope(through(0.5, 0, 1.5, Math.toRadians(10)))
                                .build(),
                        MotionStart.SETTLED,
                        3);
            case HOLD ->
                new MotionPlan(
                        MotionDuty.driving(Timeline.constant(0), Math.toRadians(8), WARM), MotionStart.AT_REST, 3);
            case BYPASS_PUSH -> new MotionPlan(pushed(), MotionStart.AT_REST, 2.5);
            case COLD_START -> new MotionPlan(cold(), MotionStart.AT_REST, 4);
        };
    }

    private static Timeline through(double from, double first, double to, double last) {
        return Timeline.through(new double[] {from, to}, new double[] {first, last});
    }

    private static MotionDuty pushed() {
        return MotionDuty.driving(Timeline.constant(0), 0, WARM)
                .pushed(through(0.2, 0, 0.7, 0.6))
                .change()
                .input(new InputState.Off())
                .bypass(through(1.5, 1, 1.7, 0))
                .build();
    }

    private static MotionDuty cold() {
        return MotionDuty.driving(through(1.5, 0, 2.5, 1), 0, COLD)
                .change()
                .throttle(through(0.3, 0.5, 1.2, 1))
                .airTemperature(COLD)
                .build();
    }
}
