package swashlight.desk.work;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import swashlight.drive.description.Dimension;
import swashlight.files.document.FileComplaint;
import swashlight.files.document.InputFault;
import swashlight.files.unit.Nearest;
import swashlight.files.unit.UnitAnswer;
import swashlight.files.unit.UnitSystem;
import swashlight.files.unit.UnitText;

/** Reads what somebody stated and gathers everything wrong with it, so that all is said at once. */
final class Inspection {
    private final List<Refusal> refusals = new ArrayList<>();

    /** A number with its unit inside a range (SI unit of the dimension); empty when it is refused. */
    OptionalDouble number(Stated stated, Dimension dimension, double low, double high) {
        UnitAnswer answer = dimension == Dimension.ANGLE
                ? UnitText.readSlope(stated.text())
                : UnitText.read(stated.text(), dimension);
        return inside(stated, answer, dimension, low, high);
    }

    /** A difference, so that 15 °C are 15 K, inside a range (SI unit of the dimension); empty when it is refused. */
    OptionalDouble difference(Stated stated, Dimension dimension, double low, double high) {
        return inside(stated, UnitText.readDifference(stated.text(), dimension), dimension, low, high);
    }

    private OptionalDouble inside(Stated stated, UnitAnswer answer, Dimension dimension, double low, double high) {
        if (answer instanceof UnitAnswer.Refused refused) {
            refuse(refused.key(), stated, refused.wrong(), refused.right());
            return OptionalDouble.empty();
        }
        double value = ((UnitAnswer.Understood) answer).value();
        if (value < low || value > high) {
            refuse("out-of-range", stated, "this is outside its range", between(low, high, dimension));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value);
    }

    /** One of some words; empty when it is refused. */
    Optional<String> oneOf(Stated stated, Collection<String> words) {
        if (words.contains(stated.text())) {
            return Optional.of(stated.text());
        }
        refuse("unknown-word", stated, "this is none of the words known here", choice(stated.text(), words));
        return Optional.empty();
    }

    /** Reads a file; stops here with everything wrong with it and with what came before. */
    <T> T filed(Supplier<T> reading) {
        try {
            return reading.get();
        } catch (InputFault fault) {
            fault.complaints().forEach(complaint -> refusals.add(refusal(complaint)));
            throw new RefusedInput(refusals);
        }
    }

    private static Refusal refusal(FileComplaint complaint) {
        String place = place(complaint);
        return new Refusal(
                complaint.key(),
                complaint.file() + (place.isEmpty() ? "" : ", " + place),
                complaint.given(),
                complaint.wrong(),
                complaint.right());
    }

    /** Line and field; nothing for a file that could not be read. */
    static String place(FileComplaint complaint) {
        if (complaint.key().equals("not-found")) {
            return "";
        }
        return "line " + complaint.line() + (complaint.field().isEmpty() ? "" : ", " + complaint.field());
    }

    /** Notes one thing wrong. */
    void refuse(String key, Stated stated, String wrong, String right) {
        Refusal refusal = new Refusal(key, stated.where(), stated.text(), wrong, right);
        if (!refusals.contains(refusal)) { // one option may be asked for by several readings
            refusals.add(refusal);
        }
    }

    /** Notes what others found. */
    void refuse(List<Refusal> more) {
        refusals.addAll(more);
    }

    /** Goes on only if nothing is wrong. */
    void close() {
        if (!refusals.isEmpty()) {
            throw new RefusedInput(refusals);
        }
    }

    /** The nearest word, or all of them. */
    static String choice(String given, Collection<String> words) {
        return Nearest.to(given, words)
                .map(word -> "did you mean " + word + "?")
                .orElse("one of " + String.join(", ", words));
    }

    private static String between(double low, double high, Dimension dimension) {
        return "a value from " + UnitSystem.SI.show(low, dimension) + " to " + UnitSystem.SI.show(high, dimension);
    }
}
