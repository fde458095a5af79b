package swashlight.files.bench;

import java.io.Reader;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import swashlight.drive.description.Dimension;
import swashlight.drive.oil.Oil;
import swashlight.files.document.InputFault;
import swashlight.files.unit.Unit;
import swashlight.files.unit.UnitTable;
import swashlight.findings.losses.BenchPoint;
import swashlight.findings.losses.BenchRun;

/**
 * A bench table in the manner of ISO 4409, units in the header:
 *
 * <pre>speed [rpm],pressure [bar],flow [L/min],torque [N.m],temperature [°C]</pre>
 *
 * <p>{@code pressure} is the difference between the ports; {@code inlet pressure} and {@code outlet pressure} may stand in its
 * place. {@code torque} may be missing, {@code share} of full stroke too (then 1).
 */
public final class BenchTableFile {
    private static final Map<String, Dimension> QUANTITIES = quantities();

    /** No reading of a bench is written with a larger number than this, in the unit of its column. */
    private static final double LARGEST_WRITTEN = 1e12;

    private BenchTableFile() {}

    /** Reads a file; throws {@link InputFault} with everything wrong in it. */
    public static BenchRun read(Path path, BenchRun.Kind kind, Oil oil) {
        return read(Table.of(path), kind, oil);
    }

    /** Reads a text under a file's name; throws {@link InputFault} with everything wrong in it. */
    public static BenchRun read(String file, Reader text, BenchRun.Kind kind, Oil oil) {
        return read(Table.of(file, text), kind, oil);
    }

    private static Map<String, Dimension> quantities() {
        Map<String, Dimension> quantities = new LinkedHashMap<>();
        quantities.put("speed", Dimension.ROTATION);
        quantities.put("pressure", Dimension.PRESSURE);
        quantities.put("inlet pressure", Dimension.PRESSURE);
        quantities.put("outlet pressure", Dimension.PRESSURE);
        quantities.put("flow", Dimension.FLOW);
        quantities.put("torque", Dimension.TORQUE);
        quantities.put("temperature", Dimension.TEMPERATURE);
        quantities.put("share", Dimension.NUMBER);
        return quantities;
    }

    private record Column(int place, Unit unit) {}

    private static BenchRun read(Table table, BenchRun.Kind kind, Oil oil) {
        Map<String, Column> columns = columns(table);
        boolean ports = columns.containsKey("inlet pressure") && columns.containsKey("outlet pressure");
        for (String needed : List.of("speed", "flow", "temperature")) {
            demand(table, columns, needed);
        }
        if (!ports) {
            demand(table, columns, "pressure");
        }
        table.check();
        List<BenchPoint> points = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            OptionalDouble torque = columns.containsKey("torque")
                    ? OptionalDouble.of(value(table, row, columns, "torque", -1e5, 1e5))
                    : OptionalDouble.empty();
            double pressure = ports
                    ? Math.abs(value(table, row, columns, "outlet pressure", -1e5, 1e8)
                            - value(table, row, columns, "inlet pressure", -1e5, 1e8))
                    : value(table, row, columns, "pressure", 0, 1e8);
            points.add(new BenchPoint(
                    value(table, row, columns, "speed", 1e-3, 1e4),
                    Math.min(pressure, 1e8),
                    value(table, row, columns, "flow", -1, 1),
                    torque,
                    value(table, row, columns, "temperature", 233, 423),
                    columns.containsKey("share") ? value(table, row, columns, "share", 1e-3, 1) : 1));
        }
        table.check();
        return new BenchRun(points, kind, oil);
    }

    private static Map<String, Column> columns(Table table) {
        Map<String, Column> columns = new HashMap<>();
        for (int place = 0; place < table.header().size(); place++) {
            String title = table.header().get(place);
            int open = title.indexOf('[');
            int close = title.indexOf(']');
            String quantity = quantity(title);
            if (!QUANTITIES.containsKey(quantity)) {
                continue;
            }
            Dimension dimension = QUANTITIES.get(quantity);
            String written =
                    open >= 0 && close > open ? title.substring(open + 1, close).trim() : "";
            Optional<Unit> unit = written.isEmpty() ? Optional.empty() : UnitTable.find(dimension, written);
            if (unit.isEmpty()) {
                table.complain(
                        "unknown-unit",
                        1,
                        quantity,
                        title,
                        "the header says no unit of this quantity",
                        "write one in brackets after the name: " + UnitTable.of(dimension));
            } else {
                columns.put(quantity, new Column(place, unit.get()));
            }
        }
        return columns;
    }

    private static String quantity(String title) {
        int open = title.indexOf('[');
        return (open < 0 ? title : title.substring(0, open)).trim();
    }

    private static void demand(Table table, Map<String, Column> columns, String needed) {
        boolean named =
                table.header().stream().anyMatch(title -> quantity(title).equals(needed));
        if (!columns.containsKey(needed) && !named) {
            table.complain(
                    "missing-column",
                    1,
                    needed,
                    String.join(",", table.header()),
                    "the column is missing",
                    "add it with its unit, such as \"" + needed + " ["
                            + UnitTable.of(QUANTITIES.get(needed)).get(0) + "]\"");
        }
    }

    /** A value in SI within SI limits; the lower limit where it is faulty (that fault is noted). */
    private static double value(
            Table table, Table.Row row, Map<String, Column> columns, String quantity, double low, double high) {
        Column column = columns.get(quantity);
        OptionalDouble number = table.reading(row, column.place(), -LARGEST_WRITTEN, LARGEST_WRITTEN);
        if (number.isEmpty()) {
            return low;
        }
        double value = column.unit().toSi(BigDecimal.valueOf(number.getAsDouble()));
        if (value >= low && value <= high) {
            return value;
        }
        table.complain(
                "out-of-range",
                row.line(),
                quantity,
                table.text(row, column.place()),
                "this is outside what can be",
                "from " + low + " to " + high + " in SI is possible");
        return low;
    }
}
