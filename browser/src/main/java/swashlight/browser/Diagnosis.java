package swashlight.browser;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.teavm.jso.JSExport;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Origin;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;
import swashlight.findings.cause.Action;
import swashlight.findings.reading.Look;
import swashlight.findings.reading.ReadingKind;

/** The entrance to the diagnosis, a module of its own: a page that only shows a drive need not load it. */
public final class Diagnosis {
    private Diagnosis() {}

    /**
     * A machine with a complaint, nothing read yet.
     *
     * @param drive its name, when it is well
     * @param values of all parameters, SI, in the order of the physics
     * @param spreads one standard deviation each, SI
     * @param origins given, fitted or typical
     */
    @JSExport
    public static PageCase machine(String drive, double[] values, double[] spreads, String[] origins) {
        List<Parameter> all = Parameters.all();
        if (values.length != all.size() || spreads.length != all.size() || origins.length != all.size()) {
            throw new IllegalArgumentException(drive + ": " + values.length + " values, " + spreads.length
                    + " spreads, " + origins.length + " origins; there are " + all.size() + " parameters");
        }
        Map<Parameter, Quantity> known = new HashMap<>();
        for (Parameter parameter : all) {
            int i = parameter.index();
            known.put(parameter, new Quantity(values[i], spreads[i], Key.find(Origin.values(), origins[i], "origin")));
        }
        DriveDescription description = TypicalDrive.complete(drive, false, known);
        return new PageCase(description, List.of(), List.of(), List.of());
    }

    /** What can be read, with SI units; no meanings but the keys. */
    @JSExport
    public static PageWords readingKinds() {
        return PageWords.of(
                Arrays.asList(ReadingKind.values()),
                ReadingKind::key,
                kind -> kind.dimension().unit(),
                ReadingKind::key);
    }

    /** How a reading may have been taken, with SI units. */
    @JSExport
    public static PageWords conditions() {
        return PageWords.of(Arrays.asList(Stated.values()), Stated::key, Stated::unit, Stated::meaning);
    }

    /** What eyes, ears and nose report. */
    @JSExport
    public static String[] looks() {
        return PageWords.texts(Arrays.asList(Look.values()), Look::key);
    }

    /** What a finding may call for; no units. */
    @JSExport
    public static PageWords actions() {
        return PageWords.of(Arrays.asList(Action.values()), Action::key, action -> "", Action::words);
    }
}
