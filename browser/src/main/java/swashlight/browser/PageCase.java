package swashlight.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.teavm.jso.JSExport;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.findings.choice.Hill;
import swashlight.findings.choice.Ledger;
import swashlight.findings.cost.Prices;
import swashlight.findings.finding.Finder;
import swashlight.findings.finding.FinderOptions;
import swashlight.findings.finding.Found;
import swashlight.findings.next.Prospect;
import swashlight.findings.next.Ranking;
import swashlight.findings.next.ReadingWorth;
import swashlight.findings.next.Tool;
import swashlight.findings.reading.Look;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.tie.Ties;

/** A machine with what was read and seen. Never changes; a change gives another. */
public final class PageCase {
    private final DriveDescription drive;
    private final List<Reading> readings;
    private final List<Look> seen;
    private final List<Look> notSeen;

    PageCase(DriveDescription drive, List<Reading> readings, List<Look> seen, List<Look> notSeen) {
        this.drive = drive;
        this.readings = readings;
        this.seen = seen;
        this.notSeen = notSeen;
    }

    /**
     * One reading more.
     *
     * @param label what its author calls it
     * @param kind key of what was read
     * @param value SI
     * @param error one standard deviation, SI; 0 takes the usual one of the kind
     * @param conditions keys of what is known of how it was taken
     * @param numbers their values, SI
     */
    @JSExport
    public PageCase reading(
            String label, String kind, double value, double error, String[] conditions, double[] numbers) {
        ReadingKind read = kind(kind);
        if (read == ReadingKind.PART_DIMENSION) {
            throw new IllegalArgumentException(label + ": a dimension of a part is added by part(), which names it");
        }
        return with(reading(label, read, value, error, new Conditions(conditions, numbers), Optional.empty()));
    }

    /** A dimension measured at teardown, of the part whose parameter it is; value and error as for a reading. */
    @JSExport
    public PageCase part(String label, String parameter, double value, double error) {
        Parameter part = Parameters.find(parameter)
                .orElseThrow(() -> new IllegalArgumentException(label + ": there is no parameter " + parameter));
        Conditions none = new Conditions(new String[0], new double[0]);
        return with(reading(label, ReadingKind.PART_DIMENSION, value, error, none, Optional.of(part)));
    }

    /** One look more that was noted as present. */
    @JSExport
    public PageCase seen(String look) {
        return new PageCase(drive, readings, more(seen, look(look)), notSeen);
    }

    /** One look more that was noted as absent. */
    @JSExport
    public PageCase notSeen(String look) {
        return new PageCase(drive, readings, seen, more(notSeen, look(look)));
    }

    /** What it comes to, with the reading to take next and what cannot be told apart; invented prices; same seed, same answer. */
    @JSExport
    public PageFinding find(int seed) {
        MachineCase machine = machine();
        Found found = new Finder(FinderOptions.usual(seed)).found(machine);
        Prices prices = Prices.invented();
        Prospect prospect = Prospect.of(found.belief(), prices, seed);
        Ledger ledger = Ledger.of(found.belief(), prices, Hill.usual());
        Ranking ranking = Ranking.of(prospect, ledger, prices, Tool.usual(), machine.readings());
        Ties ties = new Ties(prospect, prices, Tool.usual(), machine.readings());
        List<ReadingWorth> worth =
                ranking.possible().stream().filter(reading -> reading.net() > 0).toList();
        return new PageFinding(found.finding(), worth, ties.of(found.finding()));
    }

    /** A quick look, with less care, no next reading and no groups. */
    @JSExport
    public PageFinding findQuickly(int seed) {
        return new PageFinding(new Finder(FinderOptions.quick(seed)).find(machine()), List.of(), List.of());
    }

    private MachineCase machine() {
        return new MachineCase(drive.name(), false, "", drive, readings, Set.copyOf(seen), Set.copyOf(notSeen));
    }

    private PageCase with(Reading reading) {
        return new PageCase(drive, more(readings, reading), seen, notSeen);
    }

    private static Reading reading(
            String label,
            ReadingKind kind,
            double value,
            double error,
            Conditions conditions,
            Optional<Parameter> part) {
        OptionalDouble stated = error > 0 ? OptionalDouble.of(error) : OptionalDouble.empty();
        return new Reading(label, kind, value, stated, conditions.setup(part));
    }

    private static ReadingKind kind(String key) {
        for (ReadingKind kind : ReadingKind.values()) {
            if (kind.key().equals(key)) {
                return kind;
            }
        }
        throw new IllegalArgumentException(
                "there is no reading " + key + "; the list is readingKinds().keys(), for example runTime");
    }

    private static Look look(String key) {
        for (Look look : Look.values()) {
            if (look.key().equals(key)) {
                return look;
            }
        }
        throw new IllegalArgumentException("there is no look " + key + "; the list is looks(), for example oilDark");
    }

    private static <T> List<T> more(List<T> some, T another) {
        List<T> more = new ArrayList<>(some);
        more.add(another);
        return List.copyOf(more);
    }
}
