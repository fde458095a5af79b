package swashlight.files.demo;

import java.util.OptionalDouble;
import swashlight.findings.reading.Setup;

/** Stated conditions off by one standard deviation. */
final class DemoConditions {
    private static final double THERMOMETER = 4; // K, where no error is stated
    private static final double CLINOMETER = 0.005; // rad, where no error is stated

    private DemoConditions() {}

    static Setup hotter(Setup s) {
        double error = s.temperatureError().orElse(THERMOMETER);
        OptionalDouble oil = OptionalDouble.of(s.oilTemperature().orElse(333.15) + error);
        return with(s, oil, s.slope());
    }

    static Setup steeper(Setup s) {
        double slope = s.slope().orElse(0);
        double error = s.slopeError().orElse(CLINOMETER);
        return with(s, s.oilTemperature(), OptionalDouble.of(slope + (slope < 0 ? -error : error)));
    }

    private static Setup with(Setup s, OptionalDouble oil, OptionalDouble slope) {
        return new Setup(
                s.stroke(),
                s.throttle(),
                s.inputSpeed(),
                oil,
                s.temperatureError(),
                slope,
                s.slopeError(),
                s.distance(),
                s.load(),
                s.since(),
                s.ambient(),
                s.part(),
                s.lifted(),
                s.held(),
                s.backwards());
    }
}
