package swashlight.drive.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import swashlight.drive.description.Dimension;
import swashlight.drive.description.Place;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionRun;

/** One number of a run that can be followed: a channel of the drive, or something of one chamber. */
public final class Signal {
    private final String key;
    private final Dimension dimension;
    private final String meaning;
    private final ToDoubleFunction<MotionRun> reading;

    private Signal(String key, Dimension dimension, String meaning, ToDoubleFunction<MotionRun> reading) {
        this.key = key;
        this.dimension = dimension;
        this.meaning = meaning;
        this.reading = reading;
    }

    /**
     * Any other number that can be read off a run.
     *
     * @param key small letters and underscores
     * @param reading SI unit of the dimension
     */
    public static Signal computed(
            String key, Dimension dimension, String meaning, ToDoubleFunction<MotionRun> reading) {
        return new Signal(key, dimension, meaning, reading);
    }

    /** A channel; its key is the channel's name in small letters. */
    public static Signal of(MotionChannel channel) {
        return new Signal(small(channel.name()), channel.dimension(), channel.meaning(), run -> run.value(channel));
    }

    /** Several channels. */
    public static List<Signal> all(MotionChannel... channels) {
        List<Signal> signals = new ArrayList<>();
        for (MotionChannel channel : channels) {
            signals.add(of(channel));
        }
        return signals;
    }

    /** Absolute pressure of one chamber (counted from 0): {@code pump_chamber_1_pressure} is the first. */
    public static Signal pressure(Place place, int chamber) {
        return new Signal(
                chamberKey(place, chamber) + "_pressure",
                Dimension.PRESSURE,
                "pressure of one chamber",
                run -> run.chambers(place).pressure(chamber));
    }

    /** Oil through the ports into one chamber (counted from 0). */
    public static Signal portFlow(Place place, int chamber) {
        return new Signal(
                chamberKey(place, chamber) + "_port_flow",
                Dimension.FLOW,
                "oil through the ports into one chamber",
                run -> run.chambers(place).portFlow(chamber));
    }

    /** Position of one piston (counted from 0), longer chamber positive. */
    public static Signal position(Place place, int chamber) {
        return new Signal(
                chamberKey(place, chamber) + "_position",
                Dimension.LENGTH,
                "how far one piston stands out of its middle position",
                run -> run.chambers(place).position(chamber));
    }

    private static String small(String name) {
        StringBuilder small = new StringBuilder();
        for (int i = 0; i < name.length(); i++) {
            char letter = name.charAt(i);
            small.append(letter >= 'A' && letter <= 'Z' ? (char) (letter + 'a' - 'A') : letter);
        }
        return small.toString();
    }

    private static String chamberKey(Place place, int chamber) {
        return (place == Place.PUMP ? "pump" : "motor") + "_chamber_" + (chamber + 1);
    }

    /** Stable name in small letters and underscores. */
    public String key() {
        return key;
    }

    /** What it measures; values are in its SI unit. */
    public Dimension dimension() {
        return dimension;
    }

    /** One plain line. */
    public String meaning() {
        return meaning;
    }

    /** Present value, SI unit of its dimension. */
    public double of(MotionRun run) {
        return reading.applyAsDouble(run);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Signal signal && key.equals(signal.key);
    }

    @Override
    public int hashCode() {
        return key.hashCode();
    }

    @Override
    public String toString() {
        return key;
    }
}
