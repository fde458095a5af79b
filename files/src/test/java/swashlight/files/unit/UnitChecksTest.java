package swashlight.files.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swashlight.checks.CheckBook;
import swashlight.checks.CheckRow;
import swashlight.drive.description.Dimension;

/** Check: what a text with a unit is in SI, against the values NIST SP 811 (2008) prints; source and tolerance in each row. */
final class UnitChecksTest {
    /** Rows about units no parameter or reading is measured in. */
    private static final Set<String> NOT_OURS = Set.of("unit/mile", "unit/lbf-per-in-as-mass", "unit/cP");

    private static final Map<String, Dimension> BY_SI = Map.ofEntries(
            Map.entry("m", Dimension.LENGTH),
            Map.entry("m3", Dimension.VOLUME),
            Map.entry("m3/s", Dimension.FLOW),
            Map.entry("kg", Dimension.MASS),
            Map.entry("N", Dimension.FORCE),
            Map.entry("N.m", Dimension.TORQUE),
            Map.entry("Pa", Dimension.PRESSURE),
            Map.entry("W", Dimension.POWER),
            Map.entry("m/s", Dimension.SPEED),
            Map.entry("rad/s", Dimension.ROTATION),
            Map.entry("rad", Dimension.ANGLE),
            Map.entry("m2/s", Dimension.VISCOSITY),
            Map.entry("K", Dimension.TEMPERATURE));

    static Stream<CheckRow> rows() {
        return CheckBook.read("units").rows().stream().filter(row -> !NOT_OURS.contains(row.id()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void agreesWithItsSource(CheckRow row) {
        String text = row.text("x");
        Dimension dimension = text.endsWith("/rev")
                ? Dimension.DISPLACEMENT
                : BY_SI.get(row.printed().unit());
        UnitAnswer answer = UnitText.read(text, dimension);
        assertThat(answer).isInstanceOf(UnitAnswer.Understood.class);
        row.assertAgrees(((UnitAnswer.Understood) answer).value());
    }

    @Test
    void everyRowLeftOutExists() {
        assertThat(CheckBook.read("units").rows().stream().map(CheckRow::id)).containsAll(NOT_OURS);
    }

    /** Each dimension begins with the SI unit that the drive room names for it. */
    @ParameterizedTest
    @org.junit.jupiter.params.provider.EnumSource(Dimension.class)
    void theFirstUnitIsTheSiUnitOfTheDrive(Dimension dimension) {
        Unit first = UnitTable.of(dimension).get(0);
        assertThat(first.label().isEmpty() ? "1" : first.label()).isEqualTo(dimension.unit());
        assertThat(first.toSi(java.math.BigDecimal.TEN)).isEqualTo(10);
    }
}
