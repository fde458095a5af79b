package swashlight.desk.work;

import java.util.Map;
import java.util.function.Function;
import swashlight.files.demo.DemoShelf;

/** Everything the program can be asked. Each method answers one question; none of them throws at faulty input. */
public final class Desk {
    private Desk() {}

    /** How a drive runs under some circumstances, and where every litre a minute and every watt goes. */
    public static Outcome point(DriveAsked drive, Map<String, Stated> circumstances) {
        return answered(inspection -> {
            SickDrive sick = DriveShelf.open(drive, inspection);
            Circumstances when = CircumstancesReader.read(circumstances, inspection);
            inspection.close();
            return PointReport.of(sick, when);
        });
    }

    /** Whether a name is that of a demo drive, and not of a file. */
    public static boolean isDemo(String name) {
        return name.startsWith(DemoShelf.PREFIX) || DemoShelf.drives().contains(name);
    }

    private static Outcome answered(Function<Inspection, Outcome> question) {
        try {
            return question.apply(new Inspection());
        } catch (RefusedInput refused) {
            return new Outcome.Refused(refused.refusals());
        }
    }
}
