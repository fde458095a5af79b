package swashlight.files.machine;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import swashlight.drive.steady.Duty;
import swashlight.files.document.Complaints;
import swashlight.files.document.DocumentReader;
import swashlight.files.document.Fields;
import swashlight.files.document.InputFault;
import swashlight.files.document.Range;
import swashlight.files.document.Source;

/** Duties in files: what a drive is asked, in one settled situation or over time. */
public final class DutyFiles {
    private DutyFiles() {}

    /** The duty in a file; throws {@link InputFault} with every fault of it. */
    public static Duty read(Path path) {
        return open(Source.read(path));
    }

    /** The duty in a text; throws {@link InputFault} with every fault of it. */
    public static Duty open(Source source) {
        Complaints complaints = new Complaints(source.file());
        Optional<Duty> duty =
                new DutyReader(new Fields(DocumentReader.read(source, complaints), "", complaints)).read();
        complaints.check();
        return duty.orElseThrow();
    }

    /** The duty over time in a file; throws {@link InputFault} with every fault of it. */
    public static PlanFile plan(Path path) {
        return plan(Source.read(path));
    }

    /** The duty over time in a text; throws {@link InputFault} with every fault of it. */
    public static PlanFile plan(Source source) {
        Complaints complaints = new Complaints(source.file());
        Optional<PlanFile> plan =
                new PlanReader(new Fields(DocumentReader.read(source, complaints), "", complaints)).read();
        complaints.check();
        return plan.orElseThrow();
    }

    /** The keys that may change over time, with what their values may be. */
    public static Map<String, Range> changing() {
        return PlanReader.changing();
    }

    /** When something may change. */
    public static Range moment() {
        return PlanReader.MOMENT;
    }

    /** How long a duty may last. */
    public static Range duration() {
        return PlanReader.DURATION;
    }

    /** The keys of a duty that no reading has, with what their values may be. */
    public static Map<String, Range> ranges() {
        Map<String, Range> ranges = new LinkedHashMap<>();
        ranges.put("inputSpeed", DutyReader.SHAFT_SPEED);
        ranges.put("pull", Condition.LOAD.range());
        ranges.put("pushedSpeed", DutyReader.PUSHED_SPEED);
        ranges.put("brake", DutyReader.SHARE);
        ranges.put("bypass", DutyReader.SHARE);
        ranges.put("ambientPressure", DutyReader.AIR);
        return ranges;
    }
}
