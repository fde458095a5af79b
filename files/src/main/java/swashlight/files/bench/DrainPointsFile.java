package swashlight.files.bench;

import java.io.Reader;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import swashlight.files.document.InputFault;
import swashlight.findings.drain.DrainPoint;

/**
 * Case-drain tests: columns state, time, p_leak_bar, T_leak_C, p_out_bar, T_suction_C, T_out_C, q_leak_L_min, q_out_L_min.
 *
 * <p>Rows whose state ends in {@code _stopped} are of the pump standing still and give the meters' zeros. A run ends where the
 * state changes or where more than a minute passes.
 */
public final class DrainPointsFile {
    private static final double BAR = 1e5;
    private static final double LITRE_PER_MINUTE = 1e-3 / 60;
    private static final double CELSIUS_ZERO = 273.15;
    private static final double LONGEST_PAUSE = 60;
    private static final String STOPPED = "_stopped";

    private DrainPointsFile() {}

    /**
     * What a file holds.
     *
     * @param turning rows with the pump turning
     * @param drainZeros what the drain meter shows at standstill, m³/s
     * @param deliveryZeros what the delivery meter shows at standstill, m³/s
     */
    public record Content(List<DrainPoint> turning, List<Double> drainZeros, List<Double> deliveryZeros) {}

    /** Reads a file; throws {@link InputFault} with everything wrong in it. */
    public static Content read(Path path) {
        return read(Table.of(path));
    }

    /** Reads a text under a file's name; throws {@link InputFault} with everything wrong in it. */
    public static Content read(String file, Reader text) {
        return read(Table.of(file, text));
    }

    private static Content read(Table table) {
        int state = table.column("state");
        int time = table.column("time");
        int casePressure = table.column("p_leak_bar");
        int caseTemperature = table.column("T_leak_C");
        int outletPressure = table.column("p_out_bar");
        int outletTemperature = table.column("T_out_C");
        int drainFlow = table.column("q_leak_L_min");
        int deliveredFlow = table.column("q_out_L_min");
        List<DrainPoint> turning = new ArrayList<>();
        List<Double> drainZeros = new ArrayList<>();
        List<Double> deliveryZeros = new ArrayList<>();
        String lastState = "";
        double lastSeconds = 0;
        int run = -1;
        for (Table.Row row : table.rows()) {
            String name = table.text(row, state);
            double seconds = seconds(table, row, time);
            double outlet = table.number(row, outletPressure, 0, 1000);
            double pressure = outlet - table.number(row, casePressure, 0, 100);
            double caseKelvin = CELSIUS_ZERO + table.number(row, caseTemperature, -40, 150);
            double outletKelvin = CELSIUS_ZERO + table.number(row, outletTemperature, -40, 150);
            double drained = LITRE_PER_MINUTE * table.number(row, drainFlow, -50, 500);
            double delivered = LITRE_PER_MINUTE * table.number(row, deliveredFlow, -500, 5000);
            if (name.endsWith(STOPPED)) {
                drainZeros.add(drained);
                deliveryZeros.add(delivered);
                continue;
            }
            if (pressure <= 0) {
                if (outletPressure >= 0 && casePressure >= 0) {
                    table.complain(
                            "out-of-range",
                            row.line(),
                            "p_out_bar",
                            String.valueOf(outlet),
                            "a turning pump's outlet must lie above its case",
                            "end the state in _stopped if the pump stood");
                }
                continue;
            }
            if (!name.equals(lastState) || Math.abs(seconds - lastSeconds) > LONGEST_PAUSE) {
                run++;
            }
            lastState = name;
            lastSeconds = seconds;
            turning.add(new DrainPoint(name, run, BAR * pressure, caseKelvin, outletKelvin, drained, delivered));
        }
        table.check();
        return new Content(List.copyOf(turning), List.copyOf(drainZeros), List.copyOf(deliveryZeros));
    }

    private static double seconds(Table table, Table.Row row, int time) {
        String text = table.text(row, time);
        try {
            return text.isEmpty() ? 0 : LocalDateTime.parse(text).toEpochSecond(ZoneOffset.UTC);
        } catch (DateTimeException unread) {
            table.complain(
                    "not-a-time", row.line(), "time", text, "this is no time", "write it like 2023-12-21T11:39:36");
            return 0;
        }
    }
}
