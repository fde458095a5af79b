package swashlight.files.unit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import swashlight.drive.description.Dimension;

/** The units of one dimension with every spelling they are known by. */
final class UnitList {
    private final Dimension dimension;
    private final List<Unit> units = new ArrayList<>();
    private final Map<String, Unit> bySpelling = new HashMap<>();
    private final Map<String, Unit> byLooseSpelling = new HashMap<>();

    UnitList(Dimension dimension) {
        this.dimension = dimension;
    }

    UnitList add(String label, Fraction factor, String... others) {
        return put(label, factor, BigDecimal.ZERO, others);
    }

    UnitList add(String label, String factor, String... others) {
        return put(label, Fraction.of(factor), BigDecimal.ZERO, others);
    }

    UnitList addShifted(String label, Fraction factor, String offset, String... others) {
        return put(label, factor, new BigDecimal(offset), others);
    }

    List<Unit> all() {
        return List.copyOf(units);
    }

    /** Exact spelling first; then any case, but never where only the case tells milli from mega. */
    Optional<Unit> find(String written) {
        String spelling = UnitSpelling.plain(written);
        Unit exact = bySpelling.get(spelling);
        if (exact != null) {
            return Optional.of(exact);
        }
        Unit loose = byLooseSpelling.get(spelling.toLowerCase(Locale.ROOT));
        return Optional.ofNullable(loose).filter(unit -> !prefixDiffers(unit, spelling));
    }

    private static boolean prefixDiffers(Unit unit, String spelling) {
        char first = spelling.charAt(0);
        return "mM".indexOf(first) >= 0 && unit.label().charAt(0) != first;
    }

    private UnitList put(String label, Fraction factor, BigDecimal offset, String... others) {
        Unit unit = new Unit(label, UnitSpelling.symbol(label), dimension, factor, offset);
        units.add(unit);
        know(label, unit);
        for (String other : others) {
            know(other, unit);
        }
        return this;
    }

    private void know(String written, Unit unit) {
        String spelling = UnitSpelling.plain(written);
        Unit before = bySpelling.putIfAbsent(spelling, unit);
        if (before != null && before != unit) {
            throw new IllegalStateException(written + " is both " + before + " and " + unit + " of " + dimension);
        }
        byLooseSpelling.putIfAbsent(spelling.toLowerCase(Locale.ROOT), unit);
    }
}
