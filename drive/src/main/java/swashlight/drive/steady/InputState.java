package swashlight.drive.steady;

/** What turns the input shaft. */
public sealed interface InputState {
    /** The engine runs, governed: throttle is the share of its full governed speed, 0.2 … 1 (unit 1). */
    record Running(double throttle) implements InputState {
        public Running {
            if (!(throttle >= 0.2 && throttle <= 1)) {
                throw new IllegalArgumentException("throttle is " + throttle + "; it must lie between 0.2 and 1");
            }
        }
    }

    /** The engine is off: the input shaft stands still. */
    record Off() implements InputState {}

    /** The input shaft turns at a known speed, rad/s (measured, or driven by a bench), −700 … 700. */
    record Fixed(double shaftSpeed) implements InputState {
        public Fixed {
            if (!(Math.abs(shaftSpeed) <= 700)) {
                throw new IllegalArgumentException(
                        "input speed is " + shaftSpeed + " rad/s; it must lie between -700 and 700 rad/s");
            }
        }
    }
}
