package swashlight.desk.work;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import swashlight.findings.cause.Action;
import swashlight.findings.study.StudyRow;

/** Rows of a study as lines of a file, there and back. */
final class StudyRows {
    private static final String AND = "+";
    private static final int OWN = 6; // columns before the actions

    private StudyRows() {}

    static List<String> heading() {
        return Stream.concat(
                        Stream.of("number", "truth", "chance_of_truth", "readings", "needed", "ranks"),
                        Arrays.stream(Action.values()).map(Action::key))
                .toList();
    }

    static List<String> cells(StudyRow row) {
        List<String> cells = new ArrayList<>();
        cells.add(String.valueOf(row.number()));
        cells.add(row.truth());
        cells.add(digits(row.chanceOfTruth()));
        cells.add(String.valueOf(row.readings()));
        cells.add(String.join(AND, row.needed().stream().map(Action::key).toList()));
        cells.add(String.join(AND, row.ranks().stream().map(StudyRows::digits).toList()));
        for (Action action : Action.values()) {
            cells.add(digits(row.chances().get(action)));
        }
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
                parts(cells.get(5)).map(Double::valueOf).toList());
    }

    private static Stream<String> parts(String cell) {
        return Arrays.stream(cell.split("\\" + AND)).filter(part -> !part.isEmpty());
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
