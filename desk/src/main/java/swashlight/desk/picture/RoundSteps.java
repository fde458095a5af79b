package swashlight.desk.picture;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.util.Locale;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.NumberTickUnitSource;
import org.jfree.chart.axis.TickUnit;
import org.jfree.chart.axis.TickUnitSource;

/** Steps of an axis as people count (1, 2, 5 and their tens), all its numbers with equal decimals and a real minus. */
final class RoundSteps implements TickUnitSource {
    private static final int MOST_DECIMALS = 9;

    private final TickUnitSource sizes = new NumberTickUnitSource();

    @Override
    public TickUnit getLargerTickUnit(TickUnit unit) {
        return dressed(sizes.getLargerTickUnit(unit));
    }

    @Override
    public TickUnit getCeilingTickUnit(TickUnit unit) {
        return dressed(sizes.getCeilingTickUnit(unit));
    }

    @Override
    public TickUnit getCeilingTickUnit(double size) {
        return dressed(sizes.getCeilingTickUnit(size));
    }

    private static TickUnit dressed(TickUnit unit) {
        int power = (int) Math.floor(Math.log10(unit.getSize()) + 1e-9);
        return new NumberTickUnit(unit.getSize(), numbers(Math.max(0, Math.min(MOST_DECIMALS, -power))));
    }

    /** Numbers with so many decimals. */
    static NumberFormat numbers(int decimals) {
        DecimalFormatSymbols signs = DecimalFormatSymbols.getInstance(Locale.ROOT);
        signs.setMinusSign('−');
        DecimalFormat format = new DecimalFormat("0", signs);
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        return format;
    }
}
