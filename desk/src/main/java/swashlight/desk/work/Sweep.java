package swashlight.desk.work;

import java.util.Optional;

/** One condition going from one value to another, SI. */
record Sweep(Condition condition, double from, double to, int steps) {
    static final int MOST_STEPS = 401;

    /** The values, evenly spaced. */
    double[] values() {
        double[] values = new double[steps];
        for (int i = 0; i < steps; i++) {
            values[i] = i == steps - 1 ? to : from + (to - from) * i / (steps - 1); // the end exactly
        }
        return values;
    }

    /** A sweep as somebody asked for it; what is left out is as usual for the condition. */
    static Optional<Sweep> read(SweepAsked asked, Inspection inspection) {
        Optional<Condition> condition = Condition.find(asked.condition().text());
        if (condition.isEmpty()) {
            inspection.oneOf(asked.condition(), Condition.keys());
            return Optional.empty();
        }
        Condition swept = condition.get();
        double from = end(asked.from(), swept, usualFrom(swept), inspection);
        double to = end(asked.to(), swept, usualTo(swept), inspection);
        if (asked.steps() < 2 || asked.steps() > MOST_STEPS) {
            inspection.refuse(
                    "out-of-range",
                    new Stated("--steps", String.valueOf(asked.steps())),
                    "too few or too many steps",
                    "a whole number from 2 to " + MOST_STEPS);
            return Optional.empty();
        }
        return Optional.of(new Sweep(swept, from, to, asked.steps()));
    }

    private static double end(Optional<Stated> stated, Condition condition, double usual, Inspection inspection) {
        return stated.map(text -> inspection
                        .number(text, condition.dimension(), condition.low(), condition.high())
                        .orElse(usual))
                .orElse(usual);
    }

    private static double usualFrom(Condition condition) {
        return switch (condition) {
            case STROKE, BRAKE, BYPASS, SLOPE, LOAD, PUSHED_SPEED -> 0;
            case AIR_TEMPERATURE -> 253.15; // K
            case THROTTLE -> 0.4;
            case INPUT_SPEED -> 100; // rad/s
            case OIL_TEMPERATURE -> 273.15; // K
            case AMBIENT_PRESSURE -> 7e4; // Pa
        };
    }

    private static double usualTo(Condition condition) {
        return switch (condition) {
            case STROKE, BRAKE, BYPASS, THROTTLE -> 1;
            case SLOPE -> Math.toRadians(15);
            case LOAD -> 1500; // N
            case PUSHED_SPEED -> 1; // m/s
            case INPUT_SPEED -> 360; // rad/s
            case OIL_TEMPERATURE -> 383.15; // K
            case AMBIENT_PRESSURE -> 1.05e5; // Pa
            case AIR_TEMPERATURE -> 318.15; // K
        };
    }
}
