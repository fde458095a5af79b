package swashlight.findings.expect;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.SteadyPoint;
import swashlight.drive.steady.SteadySolver;
import swashlight.findings.reading.ReadingKind;

/**
 * Takes all readings of a case on a computed drive. Readings under the same conditions share one solution; a workspace for hot loops, not
 * for several threads.
 */
public final class Rehearsal {
    private static final double ENOUGH = 1e-8; // of a balance, 1: no instrument reads as finely
    private static final double LONGEST_WARM_UP = 4 * 3600; // s
    private static final int PUMP_PISTONS =
            UnitParameter.pump(UnitProperty.PISTON_COUNT).index();
    private static final int MOTOR_PISTONS =
            UnitParameter.motor(UnitProperty.PISTON_COUNT).index();

    private final List<Comparison> comparisons;
    private final List<ConditionError> errors = new ArrayList<>();
    private final List<Group> groups = new ArrayList<>();
    private final SteadySolver solver = new SteadySolver(ENOUGH);
    private final SteadyPoint point = new SteadyPoint();
    private final PullSearch pulls = new PullSearch(solver, point);
    private final WarmCurve warming = new WarmCurve(solver, point);

    /** Gets ready for a list of readings. */
    public Rehearsal(List<Comparison> comparisons) {
        this.comparisons = List.copyOf(comparisons);
        Map<String, Integer> known = new LinkedHashMap<>();
        Map<Conditions, Group> grouped = new LinkedHashMap<>();
        for (int i = 0; i < comparisons.size(); i++) {
            Conditions conditions = comparisons.get(i).conditions().ofTheDuty();
            grouped.computeIfAbsent(conditions, each -> new Group(each, places(each, known)))
                    .readings
                    .add(i);
        }
        groups.addAll(grouped.values());
    }

    private int[] places(Conditions conditions, Map<String, Integer> known) {
        int[] places = new int[conditions.all().size()];
        for (int i = 0; i < places.length; i++) {
            Condition condition = conditions.all().get(i);
            places[i] = -1;
            if (condition.spread() > 0) {
                places[i] = known.computeIfAbsent(condition.errorName(), name -> {
                    errors.add(new ConditionError(name, condition));
                    return errors.size() - 1;
                });
            }
        }
        return places;
    }

    /** The readings, in the order of the forecast. */
    public List<Comparison> comparisons() {
        return comparisons;
    }

    /** Errors of conditions that readings share, in the order in which {@link #run} takes them. */
    public List<ConditionError> errors() {
        return errors;
    }

    /**
     * Computes what every reading would be.
     *
     * @param vector the drive's values, index order, SI
     * @param shift how the cause changes the duty
     * @param deviations of the condition errors, standard deviations
     * @param forecast takes the answers
     */
    public void run(double[] vector, DutyShift shift, double[] deviations, Forecast forecast) {
        solver.load(vector);
        for (Group group : groups) {
            for (int i = 0; i < group.values.length; i++) {
                Condition condition = group.conditions.all().get(i);
                int place = group.places[i];
                group.values[i] = place < 0 ? condition.value() : condition.at(deviations[place]);
            }
            Duty duty = shift.of(Situation.duty(group.conditions, group.values));
            answer(group, duty, vector, forecast);
        }
    }

    private void answer(Group group, Duty duty, double[] vector, Forecast forecast) {
        boolean asked = false;
        boolean solved = false;
        for (int reading : group.readings) {
            ReadingKind kind = comparisons.get(reading).reading().kind();
            switch (kind) {
                case PART_DIMENSION -> part(reading, vector, forecast);
                case DRAWBAR_PULL -> pull(reading, duty, vector, forecast);
                case WARM_TEMPERATURE, WARM_UP_TIME -> warm(reading, group, duty, vector, forecast);
                default -> {
                    if (!asked) {
                        solved = solver.solve(duty);
                        point.fill(solver);
                        asked = true;
                    }
                    if (solved) {
                        forecast.put(reading, Sight.of(kind, point, duty, vector[PUMP_PISTONS], vector[MOTOR_PISTONS]));
                    } else {
                        forecast.fail(reading);
                    }
                }
            }
            asked = asked && !searches(kind);
        }
    }

    /** True when answering a kind left the solver at another duty. */
    private static boolean searches(ReadingKind kind) {
        return kind == ReadingKind.DRAWBAR_PULL || UsualSetup.warms(kind);
    }

    private void part(int reading, double[] vector, Forecast forecast) {
        comparisons
                .get(reading)
                .reading()
                .setup()
                .part()
                .ifPresentOrElse(part -> forecast.put(reading, vector[part.index()]), () -> forecast.fail(reading));
    }

    private void pull(int reading, Duty duty, double[] vector, Forecast forecast) {
        if (pulls.search(duty, vector)) {
            forecast.put(reading, pulls.pull());
        } else {
            forecast.fail(reading);
        }
    }

    private void warm(int reading, Group group, Duty duty, double[] vector, Forecast forecast) {
        double air = Situation.value(group.conditions, group.values, ConditionKind.AMBIENT, 293.15);
        if (!warming.prepare(vector, duty, air)) {
            forecast.fail(reading);
        } else if (comparisons.get(reading).reading().kind() == ReadingKind.WARM_TEMPERATURE) {
            forecast.put(reading, warming.temperatureAfter(group.conditions.value(ConditionKind.SINCE)));
        } else {
            double target = group.conditions.value(ConditionKind.OIL_TEMPERATURE);
            forecast.put(reading, warming.timeTo(target, LONGEST_WARM_UP));
        }
    }

    /** Readings under one set of conditions. */
    private static final class Group {
        final Conditions conditions;
        final int[] places;
        final double[] values;
        final List<Integer> readings = new ArrayList<>();

        Group(Conditions conditions, int[] places) {
            this.conditions = conditions;
            this.places = places;
            this.values = new double[places.length];
        }
    }
}
