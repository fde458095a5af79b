package swashlight.findings.next;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import swashlight.findings.cost.Prices;
import swashlight.findings.finding.Candidate;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;

/**
 * A usual reading with what it takes. Times: common practice, no source.
 *
 * @param reading what is read and how
 * @param tools needed
 * @param time of taking it with the machine ready, s
 */
public record Errand(Candidate reading, Set<Tool> tools, double time) {
    private static final double MINUTE = 60; // s
    private static final double WARMING = 10 * MINUTE; // s of attention while a machine is driven warm
    private static final double COOLING = 15 * MINUTE; // s of attention for having it back cold
    private static final double HOT_FROM = 328; // K
    private static final double COLD_TO = 303; // K
    private static final double STEEP = 0.02; // rad

    public Errand {
        tools = Set.copyOf(tools);
    }

    /** A candidate with its time and tools; a time that the prices state counts. */
    public static Errand of(Candidate candidate, Prices prices) {
        double usual = MINUTE * minutes(candidate.kind(), slope(candidate) != 0);
        return new Errand(candidate, needed(candidate), prices.readings().getOrDefault(candidate.key(), usual));
    }

    private static double slope(Candidate candidate) {
        double slope = candidate.setup().slope().orElse(0);
        return Math.abs(slope) > STEEP ? slope : 0;
    }

    private static double minutes(ReadingKind kind, boolean steep) {
        return switch (kind) {
            case ENGINE_SPEED -> 2;
            case PUSH_FORCE, ARM_TRAVEL -> 3;
            case CREEP_SPEED -> 4;
            case ROLL_TIME, ROLL_SPEED, DRAWBAR_PULL -> 6;
            case RUN_TIME, GROUND_SPEED -> steep ? 8 : 5;
            case HIGH_PRESSURE, GALLERY_PRESSURE -> 15;
            case WARM_TEMPERATURE, WARM_UP_TIME -> 20;
            case PART_DIMENSION -> 120;
            case AXLE_SPEED, INPUT_SPEED, PUMP_TONE, MOTOR_TONE -> 5;
        };
    }

    private static Set<Tool> needed(Candidate candidate) {
        Set<Tool> tools = EnumSet.noneOf(Tool.class);
        switch (candidate.kind()) {
            case RUN_TIME, GROUND_SPEED, ROLL_TIME, ROLL_SPEED -> tools.addAll(List.of(Tool.TAPE, Tool.STOPWATCH));
            case PUSH_FORCE -> tools.add(Tool.SCALE);
            case DRAWBAR_PULL -> tools.add(Tool.PULL_SCALE);
            case ENGINE_SPEED, PUMP_TONE, MOTOR_TONE, ARM_TRAVEL -> tools.add(Tool.PHONE);
            case INPUT_SPEED, AXLE_SPEED -> tools.add(Tool.TACHOMETER);
            case HIGH_PRESSURE, GALLERY_PRESSURE -> tools.add(Tool.GAUGE);
            case CREEP_SPEED -> tools.add(Tool.STOPWATCH);
            case WARM_TEMPERATURE, WARM_UP_TIME, PART_DIMENSION -> {
                // a thermometer or calliper is everywhere
            }
        }
        if (slope(candidate) != 0) {
            tools.add(Tool.SLOPE);
        }
        if (candidate.setup().lifted()) {
            tools.add(Tool.STANDS);
        }
        return tools;
    }

    /** Tools it needs that are not at hand. */
    public Set<Tool> lacking(Set<Tool> have) {
        Set<Tool> lacking = EnumSet.noneOf(Tool.class);
        lacking.addAll(tools);
        lacking.removeAll(have);
        return lacking;
    }

    /** Time with warming up or cooling down, when the machine was last read hot, cold or never, s. */
    public double time(List<Reading> before) {
        double last = COLD_TO;
        for (Reading reading : before) {
            last = reading.setup().oilTemperature().orElse(last);
        }
        return timeFrom(last);
    }

    /** Time with warming up or cooling down of a machine whose oil is at a temperature, K; unit s. */
    public double timeFrom(double last) {
        double wanted = leaves(last);
        boolean warm = wanted > HOT_FROM && last < HOT_FROM;
        boolean cool = wanted < COLD_TO && last > COLD_TO;
        return time + (warm ? WARMING : 0) + (cool ? COOLING : 0);
    }

    /** Temperature of the oil afterwards, K; a push or an arm's travel takes it as it is. */
    public double leaves(double last) {
        boolean still = reading.kind() == ReadingKind.PUSH_FORCE || reading.kind() == ReadingKind.ARM_TRAVEL;
        return still ? last : reading.setup().oilTemperature().orElse(last);
    }
}
