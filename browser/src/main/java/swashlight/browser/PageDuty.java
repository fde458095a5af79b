package swashlight.browser;

import org.teavm.jso.JSExport;
import swashlight.drive.motion.MotionDuty;
import swashlight.drive.motion.Timeline;
import swashlight.drive.steady.InputState;

/** What is done to a drive over time. Never changes; a change gives another. */
public final class PageDuty {
    private final MotionDuty duty;

    PageDuty(MotionDuty duty) {
        this.duty = duty;
    }

    MotionDuty duty() {
        return duty;
    }

    /**
     * Another course of one control, straight between corners.
     *
     * @param control stroke, throttle, brake, bypass, slope, pull or ground_speed
     * @param times s, not falling
     * @param values SI, one a time
     */
    @JSExport
    public PageDuty line(String control, double[] times, double[] values) {
        Timeline line = Timeline.through(times, values);
        return new PageDuty(Key.find(Control.values(), control, "control")
                .set(duty.change(), line)
                .build());
    }

    /** The engine runs. */
    @JSExport
    public PageDuty engineRuns() {
        return new PageDuty(duty.with(new InputState.Running(1)));
    }

    /** The engine is off: the input shaft stands; where a run is taken up with it turning, it slows down first. */
    @JSExport
    public PageDuty engineOff() {
        return new PageDuty(duty.with(new InputState.Off()));
    }

    /** The input shaft turns at a speed, rad/s. */
    @JSExport
    public PageDuty inputTurns(double speed) {
        return new PageDuty(duty.with(new InputState.Fixed(speed)));
    }

    /** What the wheels stand on: ground, lifted, held or pushed. */
    @JSExport
    public PageDuty footing(String footing) {
        return new PageDuty(duty.with(Key.find(MotionDuty.Footing.values(), footing, "footing")));
    }

    /** Oil temperature, K. */
    @JSExport
    public PageDuty oilTemperature(double kelvin) {
        return new PageDuty(duty.change().oilTemperature(kelvin).build());
    }

    /** Air pressure, Pa. */
    @JSExport
    public PageDuty ambientPressure(double pascal) {
        return new PageDuty(duty.change().ambientPressure(pascal).build());
    }

    /** Air temperature, K. */
    @JSExport
    public PageDuty airTemperature(double kelvin) {
        return new PageDuty(duty.change().airTemperature(kelvin).build());
    }
}
