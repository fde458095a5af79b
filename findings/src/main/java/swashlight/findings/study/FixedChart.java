package swashlight.findings.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import swashlight.findings.cause.Causes;
import swashlight.findings.choice.RepairOption;
import swashlight.findings.cost.Job;
import swashlight.findings.evidence.CauseMachine;
import swashlight.findings.evidence.Unknowns;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Forecast;
import swashlight.findings.expect.Rehearsal;
import swashlight.findings.reading.Look;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;

/**
 * A chart such as hangs in workshops: what is cheap and outside first, then the roll test, then exchange; the first yes ends it. It reads what
 * the finding reads, each number as a share of the book's (the drive as described). Order and limits: common practice, no source.
 *
 * <pre>
 *   1  arm travel below 0.92                                    adjust the control
 *   2  belt glazed, or input below 0.96 of what the engine does renew the belt
 *   3  push above 1.6                                           free the brake
 *   4  wheel turns while the machine stands                     put wheels right
 *   5  oil low, milky, foamy or burnt                           change the oil
 *   6  dirty fins or broken fan, and hot 0.9 of cold or less    restore cooling
 *   7  engine below 0.94                                        service the engine
 *   8  every speed at least 0.9                                 leave alone
 *   9  chips in the oil                                         exchange
 *  10  rolls at 1.6 or more                                     exchange
 *  11  rolls below 1.2: the drive holds                         renew the belt
 *  12  rolls between or not rolled, climb 0.9 of level or more  renew the belt
 *  13  else                                                     exchange
 * </pre>
 */
final class FixedChart {
    private static final double FAST_ENOUGH = 0.9; // of the book's speed, 1
    private static final double ARM = 0.92; // of the book's travel, 1
    private static final double SLIPS = 0.96; // of the engine's share, 1
    private static final double ENGINE = 0.94; // of the book's, 1
    private static final double HARD = 1.6; // of the book's push, 1
    private static final double FADES = 0.9; // hot over cold, and climb over level, 1
    private static final double LEAKS = 1.6; // of the book's roll, 1
    private static final double HOLDS = 1.2; // of the book's roll, 1

    private final MachineCase machine;
    private final double[] book;

    private FixedChart(MachineCase machine) {
        this.machine = machine;
        this.book = book(machine);
    }

    /** What the chart says is to be done. */
    static RepairOption work(MachineCase machine) {
        return new FixedChart(machine)
                .job()
                .map(job -> new RepairOption(List.of(job)))
                .orElseGet(() -> new RepairOption(List.of()));
    }

    private static double[] book(MachineCase machine) {
        Rehearsal rehearsal =
                new Rehearsal(machine.readings().stream().map(Comparison::of).toList());
        Unknowns unknowns = new Unknowns(machine.drive(), rehearsal.errors());
        Forecast forecast = new Forecast(machine.readings().size());
        new CauseMachine(Causes.all().get(0), unknowns, rehearsal)
                .predict(new double[0], new double[unknowns.size()], forecast);
        double[] book = new double[forecast.size()];
        for (int i = 0; i < book.length; i++) {
            book[i] = forecast.value(i);
        }
        return book;
    }

    private Optional<Job> job() {
        if (armShort()) {
            return Optional.of(Job.ADJUST_CONTROL);
        }
        if (saw(Look.BELT_GLAZED) || least(ReadingKind.INPUT_SPEED).orElse(1) < SLIPS * engine()) {
            return Optional.of(Job.RENEW_BELT);
        }
        if (hardToPush()) {
            return Optional.of(Job.FREE_BRAKE);
        }
        if (saw(Look.WHEEL_TURNS_MACHINE_STANDS)) {
            return Optional.of(Job.RIGHT_WHEELS);
        }
        if (saw(Look.OIL_BELOW_MARK, Look.OIL_MILKY, Look.OIL_FOAMY, Look.OIL_BURNT)) {
            return Optional.of(Job.CHANGE_OIL);
        }
        if (saw(Look.FINS_DIRTY, Look.FAN_DAMAGED) && speed("level, hot") <= FADES * speed("level, cold")) {
            return Optional.of(Job.RESTORE_COOLING);
        }
        if (engine() < ENGINE || (!taken(ReadingKind.ENGINE_SPEED) && saw(Look.ENGINE_LABOURS))) {
            return Optional.of(Job.SERVICE_ENGINE);
        }
        if (least(ReadingKind.GROUND_SPEED).orElse(1) >= FAST_ENOUGH) {
            return Optional.empty();
        }
        return Optional.of(outsideAfterAll() ? Job.RENEW_BELT : Job.EXCHANGE_DRIVE);
    }

    private boolean armShort() {
        return taken(ReadingKind.ARM_TRAVEL)
                ? least(ReadingKind.ARM_TRAVEL).orElse(1) < ARM
                : saw(Look.ARM_SHORT_OF_STOP);
    }

    private boolean hardToPush() {
        return taken(ReadingKind.PUSH_FORCE) ? most(ReadingKind.PUSH_FORCE).orElse(1) > HARD : saw(Look.HARD_TO_PUSH);
    }

    private double engine() {
        return least(ReadingKind.ENGINE_SPEED).orElse(1);
    }

    /** Nothing outside was found, and the drive seems to hold: slip of the belt is what is left. */
    private boolean outsideAfterAll() {
        if (saw(Look.DEBRIS_CHIPS)) {
            return false;
        }
        OptionalDouble rolls = most(ReadingKind.ROLL_SPEED);
        if (rolls.isPresent()) {
            return rolls.getAsDouble() < HOLDS
                    || (rolls.getAsDouble() < LEAKS && speed("climb, hot") >= FADES * speed("level, hot"));
        }
        return speed("climb, hot") >= FADES * speed("level, hot");
    }

    private boolean saw(Look... any) {
        Set<Look> seen = machine.seen();
        return Arrays.stream(any).anyMatch(seen::contains);
    }

    private boolean taken(ReadingKind kind) {
        return machine.readings().stream().anyMatch(reading -> reading.kind() == kind);
    }

    private OptionalDouble least(ReadingKind kind) {
        return shares(kind).stream().mapToDouble(Double::doubleValue).min();
    }

    private OptionalDouble most(ReadingKind kind) {
        return shares(kind).stream().mapToDouble(Double::doubleValue).max();
    }

    /** Readings of a kind over the book's, 1. */
    private List<Double> shares(ReadingKind kind) {
        List<Double> shares = new ArrayList<>();
        for (int i = 0; i < book.length; i++) {
            if (machine.readings().get(i).kind() == kind && book[i] > 0) {
                shares.add(machine.readings().get(i).value() / book[i]);
            }
        }
        return shares;
    }

    /** A speed over the book's, 1; that of the book when it was not read. */
    private double speed(String label) {
        for (int i = 0; i < book.length; i++) {
            Reading reading = machine.readings().get(i);
            if (reading.label().equals(label) && book[i] > 0) {
                return reading.value() / book[i];
            }
        }
        return 1;
    }
}
