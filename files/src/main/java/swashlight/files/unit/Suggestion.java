package swashlight.files.unit;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import swashlight.drive.description.Dimension;

/** What somebody may have meant whose number is right and whose unit is not: 70 mm for a clearance is 70 µm. */
public final class Suggestion {
    private static final double THOUSAND = 1000;
    private static final double ROUNDING = 1e-9; // of a ratio of units, unit 1

    private Suggestion() {}

    /**
     * The same number with the unit that brings it into its range: a thousandfold slip first, else the only unit that does.
     *
     * @param given what was read
     * @param low least value that is right, SI unit of the dimension
     * @param high greatest value that is right, SI unit of the dimension
     */
    public static Optional<String> of(UnitAnswer.Understood given, double low, double high) {
        Dimension dimension = given.unit().dimension();
        List<Unit> fitting = UnitTable.of(dimension).stream()
                .filter(unit -> inside(unit.toSi(given.number()), low, high))
                .toList();
        Optional<Unit> thousandfold = fitting.stream()
                .filter(unit -> isThousand(unit.ratio(given.unit())))
                .findFirst();
        if (thousandfold.isPresent()) {
            return thousandfold.map(unit -> text(given.number(), unit));
        }
        for (int power : new int[] {3, -3}) {
            BigDecimal scaled = given.number().scaleByPowerOfTen(power);
            if (dimension != Dimension.TEMPERATURE && inside(given.unit().toSi(scaled), low, high)) {
                return Optional.of(text(scaled, given.unit()));
            }
        }
        return fitting.size() == 1 ? Optional.of(text(given.number(), fitting.get(0))) : Optional.empty();
    }

    private static boolean inside(double value, double low, double high) {
        return value != 0 && value >= low && value <= high;
    }

    private static boolean isThousand(double ratio) {
        return Math.abs(ratio / THOUSAND - 1) < ROUNDING || Math.abs(ratio * THOUSAND - 1) < ROUNDING;
    }

    private static String text(BigDecimal number, Unit unit) {
        return unit.label().isEmpty() ? number.toPlainString() : number.toPlainString() + " " + unit.label();
    }
}
