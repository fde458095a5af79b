package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import swashlight.desk.report.Value;

/** The cases of a family of curves: the one asked for, and others beside it that differ in one thing. */
final class BesideReader {
    private BesideReader() {}

    static List<CurveReport.Case> read(
            SickDrive drive, Circumstances when, List<Stated> beside, Inspection inspection) {
        List<CurveReport.Case> family = new ArrayList<>();
        String first = drive.ails().isEmpty() ? "asked" : "sick";
        family.add(new CurveReport.Case(first, Value.word("beside." + first), drive, when));
        for (Stated text : beside) {
            other(drive, when, text, inspection).ifPresent(family::add);
        }
        return family;
    }

    private static Optional<CurveReport.Case> other(
            SickDrive drive, Circumstances when, Stated text, Inspection inspection) {
        if (text.text().equals("sound")) {
            return Optional.of(new CurveReport.Case("sound", Value.word("beside.sound"), drive.cured(), when));
        }
        int equals = text.text().indexOf('=');
        Optional<Condition> condition = equals < 0
                ? Optional.empty()
                : Condition.find(text.text().substring(0, equals).strip());
        if (condition.isEmpty()) {
            inspection.refuse(
                    "unknown-field",
                    text,
                    "this names no condition",
                    "sound, or a condition and its value such as oil=20C; conditions: "
                            + String.join(", ", Condition.keys()));
            return Optional.empty();
        }
        Stated value =
                new Stated(text.where(), text.text().substring(equals + 1).strip());
        OptionalDouble number = inspection.number(
                value,
                condition.get().dimension(),
                condition.get().low(),
                condition.get().high());
        return number.isEmpty()
                ? Optional.empty()
                : Optional.of(new CurveReport.Case(
                        condition.get().key() + "=" + value.text(),
                        Value.word(
                                drive.ails().isEmpty() ? "beside.condition" : "beside.sick.condition",
                                Value.word("condition." + condition.get().key()),
                                Value.of(number.getAsDouble(), condition.get().measure())),
                        drive,
                        when.with(condition.get(), number.getAsDouble())));
    }
}
