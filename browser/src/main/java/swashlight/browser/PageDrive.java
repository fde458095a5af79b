package swashlight.browser;

import java.util.ArrayList;
import java.util.List;
import org.teavm.jso.JSExport;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Parameters;
import swashlight.drive.fault.Fault;
import swashlight.drive.fault.Faults;
import swashlight.drive.motion.MotionDuty;
import swashlight.drive.motion.MotionStart;
import swashlight.drive.motion.MovingDrive;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.SteadyDrive;

/** A drive and what is wrong with it. Never changes; a change gives another. */
public final class PageDrive {
    private record Wrong(Fault fault, double severity) {}

    private final DriveDescription healthy;
    private final List<Wrong> wrong;

    private PageDrive(DriveDescription healthy, List<Wrong> wrong) {
        this.healthy = healthy;
        this.wrong = wrong;
    }

    static PageDrive healthy(DriveDescription description) {
        return new PageDrive(description, List.of());
    }

    /** The name its author gave it. */
    @JSExport
    public String name() {
        return healthy.name();
    }

    /** Every value with its faults, SI, in the order of the parameters. */
    @JSExport
    public double[] values() {
        return present().vector();
    }

    /** One standard deviation of every value of the healthy drive, SI. */
    @JSExport
    public double[] spreads() {
        return Parameters.all().stream()
                .mapToDouble(parameter -> healthy.quantity(parameter).spread())
                .toArray();
    }

    /** Where every value of the healthy drive came from: given, fitted or typical. */
    @JSExport
    public String[] origins() {
        return PageWords.texts(
                Parameters.all(),
                parameter -> Key.of(healthy.quantity(parameter).origin()));
    }

    /** The same drive with some numbers given, SI. */
    @JSExport
    public PageDrive with(String[] keys, double[] values) {
        return new PageDrive(healthy.with(Physics.given(keys, values)), wrong);
    }

    /** What would be wrong with the same drive with these numbers, SI. */
    @JSExport
    public PageComplaints complaintsWith(String[] keys, double[] values) {
        return PageComplaints.about(() -> with(keys, values));
    }

    /** What would be wrong with the same drive with one fault more, severity in the fault's SI unit. */
    @JSExport
    public PageComplaints complaintsWithFault(String key, double severity) {
        return PageComplaints.about(() -> withFault(key, severity));
    }

    /** The same drive with one fault more, severity in the fault's SI unit. */
    @JSExport
    public PageDrive withFault(String key, double severity) {
        Fault fault = Faults.find(key)
                .orElseThrow(() -> new IllegalArgumentException(
                        "there is no fault " + key + "; the list is faults().keys(), for example pump-face-worn"));
        List<Wrong> more = new ArrayList<>(wrong);
        more.add(new Wrong(fault, severity));
        PageDrive worse = new PageDrive(healthy, more);
        worse.present(); // a drive that cannot be is refused here, where the severity is known
        return worse;
    }

    /** The same drive without its faults. */
    @JSExport
    public PageDrive repaired() {
        return healthy(healthy);
    }

    /** Keys of its faults, oldest first. */
    @JSExport
    public String[] faults() {
        return PageWords.texts(wrong, each -> each.fault().key());
    }

    /** Severities of its faults, SI. */
    @JSExport
    public double[] severities() {
        return wrong.stream().mapToDouble(Wrong::severity).toArray();
    }

    /** Begins a run with the machine standing. */
    @JSExport
    public PageRun startAtRest(PageDuty duty, double tolerance) {
        return start(duty, MotionStart.AT_REST, tolerance);
    }

    /** Begins a run in the settled state of the duty at time 0. */
    @JSExport
    public PageRun startSettled(PageDuty duty, double tolerance) {
        return start(duty, MotionStart.SETTLED, tolerance);
    }

    /** The settled state under the duty's controls at a time, s. */
    @JSExport
    public PagePoint settled(PageDuty duty, double time) {
        Duty settled = duty.duty().settledAt(time);
        for (Wrong each : wrong) {
            settled = each.fault().on(settled, each.severity());
        }
        return new PagePoint(new SteadyDrive(present()).answer(settled));
    }

    /** Begins a run in the state another run has reached, whatever its drive and duty: a fault that comes on the way, an engine turned off. */
    @JSExport
    public PageRun takeUp(PageRun run, PageDuty duty, double tolerance) {
        return new PageRun(new MovingDrive(present()).start(felt(duty.duty()), run.state(), tolerance), this::felt);
    }

    PageRun start(PageDuty duty, MotionStart start, double tolerance) {
        return new PageRun(new MovingDrive(present()).start(felt(duty.duty()), start, tolerance), this::felt);
    }

    /** What the faults of use make of a duty. */
    private MotionDuty felt(MotionDuty duty) {
        MotionDuty felt = duty;
        for (Wrong each : wrong) {
            felt = each.fault().on(felt, each.severity());
        }
        return felt;
    }

    private DriveDescription present() {
        DriveDescription present = healthy;
        for (Wrong each : wrong) {
            present = each.fault().on(present, each.severity());
        }
        return present;
    }
}
