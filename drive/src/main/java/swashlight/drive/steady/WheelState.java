package swashlight.drive.steady;

/** What the wheels stand on or are held by. */
public sealed interface WheelState {
    /**
     * On the ground. Slope in rad, positive when the machine's forward end points uphill, −0.7 … 0.7; pull is the drawbar force
     * that resists motion either way, N, 0 … {@link #MOST_PULL}.
     */
    record Ground(double slope, double pull) implements WheelState {
        /** Largest pull that can be asked, N: far beyond any machine of this size. */
        public static final double MOST_PULL = 1e5;

        public Ground {
            if (!(Math.abs(slope) <= 0.7)) {
                throw new IllegalArgumentException("slope is " + slope + " rad; it must lie between -0.7 and 0.7 rad");
            }
            if (!(pull >= 0 && pull <= MOST_PULL)) {
                throw new IllegalArgumentException(
                        "pull is " + pull + " N; it must lie between 0 and " + MOST_PULL + " N");
            }
        }
    }

    /** Lifted clear of the ground, free to turn. */
    record Lifted() implements WheelState {}

    /** Held still, for example against a wall. */
    record Held() implements WheelState {}

    /** Pushed or towed over the ground at a known speed, m/s, −10 … 10; slope as for Ground, rad. */
    record Pushed(double speed, double slope) implements WheelState {
        public Pushed {
            if (!(Math.abs(speed) <= 10) || !(Math.abs(slope) <= 0.7)) {
                throw new IllegalArgumentException("pushed speed is " + speed + " m/s on slope " + slope
                        + " rad; they must lie within ±10 m/s and ±0.7 rad");
            }
        }
    }
}
