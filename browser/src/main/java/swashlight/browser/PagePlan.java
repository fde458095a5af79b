package swashlight.browser;

import org.teavm.jso.JSExport;
import swashlight.drive.motion.MotionPlan;

/** A duty with its beginning and its end. */
public final class PagePlan {
    private final MotionPlan plan;

    PagePlan(MotionPlan plan) {
        this.plan = plan;
    }

    /** What is done. */
    @JSExport
    public PageDuty duty() {
        return new PageDuty(plan.duty());
    }

    /** How long, s. */
    @JSExport
    public double duration() {
        return plan.duration();
    }

    /** Begins a run of a drive as the plan says. */
    @JSExport
    public PageRun begin(PageDrive drive, double tolerance) {
        return drive.start(duty(), plan.start(), tolerance);
    }
}
