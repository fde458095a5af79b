package swashlight.desk.work;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Stream;
import swashlight.findings.cause.Action;
import swashlight.findings.study.Bills;
import swashlight.findings.study.Slips;
import swashlight.findings.study.StudyRow;

/** Rows of a study as lines of a file, there and back. */
final class StudyRows {
    private static final String AND = "+";
    private static final String NONE = "none"; // kept, and there was none
    private static final int OWN = 7; // columns before the actions
    private static final int BILLS = 8; // columns of costs

    private StudyRows() {}

    static List<String> heading() {
        List<String> heading = new ArrayList<>(
                List.of("number", "truth", "chance_of_truth", "readings", "needed", "ranks", "effective"));
        Arrays.stream(Action.values()).map(Action::key).forEach(heading::add);
        heading.addAll(List.of("wild", "named", "chosen", "charted", "promised_cost", "cost_by_money"));
        heading.addAll(List.of("cost_by_action", "cost_of_exchange", "cost_by_chart", "cost_known"));
        return heading;
    }

    static List<String> cells(StudyRow row) {
        List<String> cells = new ArrayList<>();
        cells.add(String.valueOf(row.number()));
        cells.add(row.truth());
        cells.add(digits(row.chanceOfTruth()));
        cells.add(String.valueOf(row.readings()));
        cells.add(String.join(AND, row.needed().stream().map(Action::key).toList()));
        cells.add(String.join(AND, row.ranks().stream().map(StudyRows::digits).toList()));
        cells.add(digits(row.effective()));
        for (Action action : Action.values()) {
            cells.add(digits(row.chances().get(action)));
        }
        cells.add(row.slips().map(StudyRows::wild).orElse(""));
        cells.add(row.slips().map(StudyRows::named).orElse(""));
        cells.addAll(row.bills().map(StudyRows::bills).orElseGet(() -> Collections.nCopies(BILLS, "")));
        return cells;
    }

    static StudyRow row(List<String> cells) {
        Map<Action, Double> chances = new EnumMap<>(Action.class);
        for (Action action : Action.values()) {
            chances.put(action, Double.parseDouble(cells.get(OWN + action.ordinal())));
        }
        return new StudyRow(
                Integer.parseInt(cells.get(0)),
                cells.get(1),
                Double.parseDouble(cells.get(2)),
                Integer.parseInt(cells.get(3)),
                chances,
                parts(cells.get(4)).map(StudyRows::action).toList(),
                parts(cells.get(5)).map(Double::valueOf).toList(),
                Double.parseDouble(cells.get(6)),
                slips(cells.get(OWN + Action.values().length), cells.get(OWN + Action.values().length + 1)),
                bills(cells.subList(OWN + Action.values().length + 2, cells.size())));
    }

    private static String wild(Slips slips) {
        return slips.wild().isEmpty()
                ? NONE
                : String.join(
                        AND,
                        new TreeMap<>(slips.wild())
                                .entrySet().stream()
                                        .map(slip -> slip.getKey() + ":" + digits(slip.getValue()))
                                        .toList());
    }

    private static String named(Slips slips) {
        return slips.named().isPresent() ? String.valueOf(slips.named().getAsInt()) : NONE;
    }

    private static Optional<Slips> slips(String wild, String named) {
        if (wild.isEmpty()) {
            return Optional.empty();
        }
        Map<Integer, Double> places = new TreeMap<>();
        parts(wild.equals(NONE) ? "" : wild)
                .map(part -> part.split(":"))
                .forEach(pair -> places.put(Integer.valueOf(pair[0]), Double.valueOf(pair[1])));
        return Optional.of(
                new Slips(places, named.equals(NONE) ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(named))));
    }

    private static List<String> bills(Bills bills) {
        return List.of(
                bills.chosen(),
                bills.charted(),
                digits(bills.promised()),
                digits(bills.byMoney()),
                digits(bills.byAction()),
                digits(bills.exchange()),
                digits(bills.chart()),
                digits(bills.known()));
    }

    private static Optional<Bills> bills(List<String> cells) {
        if (cells.get(0).isEmpty()) {
            return Optional.empty();
        }
        double[] money = cells.subList(2, BILLS).stream()
                .mapToDouble(Double::parseDouble)
                .toArray();
        return Optional.of(
                new Bills(cells.get(0), cells.get(1), money[0], money[1], money[2], money[3], money[4], money[5]));
    }

    private static Stream<String> parts(String cell) {
        return Arrays.stream(cell.split("[" + AND + "]")).filter(part -> !part.isEmpty());
    }

    private static Action action(String key) {
        return Arrays.stream(Action.values())
                .filter(action -> action.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static String digits(double number) {
        return String.format(Locale.ROOT, "%.6g", number);
    }
}
