package swashlight.browser;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.teavm.jso.JSExport;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.fault.Faults;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionDuty;
import swashlight.drive.motion.MotionEvent;
import swashlight.drive.motion.NamedDuty;
import swashlight.drive.motion.PortZone;
import swashlight.drive.motion.Timeline;
import swashlight.drive.steady.Event;
import swashlight.drive.steady.LedgerItem;

/** The entrance: drives, duties, and the words and units of everything that has a key. */
public final class Physics {
    private Physics() {}

    /** The light rider of the demos. */
    @JSExport
    public static PageDrive lightRider() {
        return PageDrive.healthy(LightRider.description());
    }

    /**
     * A drive of which some numbers are known; the rest becomes what is usual for its size.
     *
     * @param keys such as {@code pump.displacement}
     * @param values SI, one a key
     */
    @JSExport
    public static PageDrive drive(String name, String[] keys, double[] values) {
        return PageDrive.healthy(TypicalDrive.complete(name, false, given(keys, values)));
    }

    /** A drive of which every number is given, in the order of {@link #parameters()}, SI. */
    @JSExport
    public static PageDrive driveOf(String name, double[] values) {
        List<Parameter> all = Parameters.all();
        if (values.length != all.size()) {
            throw new IllegalArgumentException(
                    name + ": " + values.length + " values; there are " + all.size() + " parameters");
        }
        Map<Parameter, Quantity> known = new HashMap<>();
        for (Parameter parameter : all) {
            known.put(parameter, Quantity.given(values[parameter.index()]));
        }
        return PageDrive.healthy(TypicalDrive.complete(name, false, known));
    }

    /** Full throttle on the ground: stroke in shares of full travel, slope in rad, oil in K. */
    @JSExport
    public static PageDuty driving(double stroke, double slope, double oilTemperature) {
        return new PageDuty(MotionDuty.driving(Timeline.constant(stroke), slope, oilTemperature));
    }

    /** A duty that shows what a drive is like, by its key in {@link #namedDuties()}. */
    @JSExport
    public static PagePlan namedDuty(String key) {
        return new PagePlan(NamedDuty.find(key)
                .orElseThrow(() -> new IllegalArgumentException(
                        "there is no duty " + key + "; the list is namedDuties().keys(), for example launch"))
                .plan());
    }

    /** Duties that show what a drive is like; no units. */
    @JSExport
    public static PageWords namedDuties() {
        return PageWords.of(Arrays.asList(NamedDuty.values()), NamedDuty::key, duty -> "", NamedDuty::meaning);
    }

    /** Everything that describes a drive, in the order of its values. */
    @JSExport
    public static PageParameters parameters() {
        return new PageParameters(Parameters.all());
    }

    /** Everything that can be wrong. */
    @JSExport
    public static PageFaults faults() {
        return new PageFaults(Faults.all());
    }

    /** What can be followed of a whole drive; a run adds its chambers. */
    @JSExport
    public static PageWords channels() {
        return PageWords.of(
                Arrays.asList(MotionChannel.values()),
                Key::of,
                channel -> channel.dimension().unit(),
                MotionChannel::meaning);
    }

    /** What a settled state says of itself. */
    @JSExport
    public static PageWords pointQuantities() {
        return PageWords.of(
                Arrays.asList(PointQuantity.values()),
                Key::of,
                quantity -> quantity.dimension().unit(),
                PointQuantity::meaning);
    }

    /** The lines of a settled state's ledger; units are those of power. */
    @JSExport
    public static PageWords ledgerItems() {
        return PageWords.of(Arrays.asList(LedgerItem.values()), Key::of, item -> "W", LedgerItem::meaning);
    }

    /** Where a chamber can stand: keys of the numbers that its port signal takes, from 0. */
    @JSExport
    public static String[] portZones() {
        return Key.all(Arrays.asList(PortZone.values()));
    }

    /** What can begin and end during a run. */
    @JSExport
    public static PageWords runEvents() {
        return PageWords.of(Arrays.asList(MotionEvent.Kind.values()), Key::of, kind -> "", MotionEvent.Kind::meaning);
    }

    /** Keys of what is remarkable about a settled state. */
    @JSExport
    public static String[] pointEvents() {
        return Key.all(Arrays.asList(Event.values()));
    }

    static Map<Parameter, Quantity> given(String[] keys, double[] values) {
        if (keys.length != values.length) {
            throw new IllegalArgumentException(values.length + " values for " + keys.length + " keys");
        }
        Map<Parameter, Quantity> known = new HashMap<>();
        for (int i = 0; i < keys.length; i++) {
            String key = keys[i];
            Parameter parameter = Parameters.find(key)
                    .orElseThrow(() -> new IllegalArgumentException("there is no parameter " + key
                            + "; the list is parameters().keys(), for example pump.boreClearance"));
            known.put(parameter, Quantity.given(values[i]));
        }
        return known;
    }
}
