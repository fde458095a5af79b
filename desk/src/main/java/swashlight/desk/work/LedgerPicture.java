package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import swashlight.desk.report.Axis;
import swashlight.desk.report.Bar;
import swashlight.desk.report.Figure;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Value;
import swashlight.drive.steady.LedgerItem;
import swashlight.drive.steady.SteadyPoint;

/** The power side of a ledger as bars: what gives, what takes. */
final class LedgerPicture {
    private static final double SMALLEST = 0.002; // share of the largest item that is still drawn, 1

    private LedgerPicture() {}

    static List<Figure> of(SteadyPoint point) {
        double largest = 0;
        for (LedgerItem item : LedgerItem.values()) {
            largest = Math.max(largest, Math.abs(point.power(item)));
        }
        List<Bar> bars = new ArrayList<>();
        for (LedgerItem item : LedgerItem.values()) {
            double power = point.power(item);
            if (Math.abs(power) > SMALLEST * largest) {
                bars.add(new Bar(Value.wordOr("ledger." + item.name(), item.meaning()), 0, power, power < 0 ? 1 : 0));
            }
        }
        Axis axis = new Axis(Value.word("axis.power"), Measure.POWER);
        return bars.isEmpty() ? List.of() : List.of(new Figure.Bars(Value.word("picture.ledger"), axis, bars));
    }
}
