package swashlight.files.bench;

import java.io.Reader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import swashlight.drive.oil.Oil;
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
    private static final List<String> QUANTITIES =
            List.of("speed", "pressure", "inlet pressure", "outlet pressure", "flow", "torque", "temperature", "share");

    private BenchTableFile() {}

    /** Reads a file; throws {@link TableFault} with every fault in it. */
    public static BenchRun read(Path path, BenchRun.Kind kind, Oil oil) {
        return read(Table.of(path), kind, oil);
    }

    /** Reads a text under a file's name; throws {@link TableFault} with every fault in it. */
    public static BenchRun read(String file, Reader text, BenchRun.Kind kind, Oil oil) {
        return read(Table.of(file, text), kind, oil);
    }

    private record Column(int place, double factor, double offset) {}

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
            String quantity = (open < 0 ? title : title.substring(0, open)).trim();
            if (!QUANTITIES.contains(quantity)) {
                continue;
            }
            String kind = quantity.endsWith("pressure") ? "pressure" : quantity;
            String unit =
                    open >= 0 && close > open ? title.substring(open + 1, close).trim() : "";
            Optional<double[]> known = HeaderUnit.of(kind, unit);
            if (known.isEmpty()) {
                table.fault(
                        "unknown-unit",
                        1,
                        quantity,
                        title,
                        "write the unit in brackets after the name, one of " + HeaderUnit.unitsOf(kind));
            } else {
                columns.put(quantity, new Column(place, known.get()[0], known.get()[1]));
            }
        }
        return columns;
    }

    private static void demand(Table table, Map<String, Column> columns, String needed) {
        boolean named =
                table.header().stream().anyMatch(title -> title.equals(needed) || title.startsWith(needed + " "));
        if (!columns.containsKey(needed) && !named) {
            table.fault(
                    "missing-column",
                    1,
                    needed,
                    String.join(",", table.header()),
                    "this column is needed, such as \"" + needed + " ["
                            + HeaderUnit.unitsOf(needed).split(",")[0] + "]\"");
        }
    }

    /** A value in SI within SI limits; the lower limit where it is faulty (that fault is noted). */
    private static double value(
            Table table, Table.Row row, Map<String, Column> columns, String quantity, double low, double high) {
        Column column = columns.get(quantity);
        double number = table.number(
                row, column.place(), low / column.factor() - column.offset(), high / column.factor() - column.offset());
        return Math.max(low, Math.min(high, column.factor() * (number + column.offset())));
    }
}
