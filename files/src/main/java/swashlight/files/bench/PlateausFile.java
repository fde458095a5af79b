package swashlight.files.bench;

import java.io.Reader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swashlight.files.document.InputFault;
import swashlight.findings.rig.Plateau;
import swashlight.findings.rig.PlateauLabels;

/**
 * Plateaus of a cycling rig: columns cycle, step, PS1_bar, FS1_L_min, EPS1_W, TS1_degC and, where known, pump_leak_class,
 * valve_pct, accumulator_bar, unstable_flag. Other columns are passed over.
 */
public final class PlateausFile {
    private static final double BAR = 1e5;
    private static final double LITRE_PER_MINUTE = 1e-3 / 60;
    private static final double CELSIUS_ZERO = 273.15;

    private PlateausFile() {}

    /** Reads a file; throws {@link InputFault} with everything wrong in it. */
    public static List<Plateau> read(Path path) {
        return read(Table.of(path));
    }

    /** Reads a text under a file's name; throws {@link InputFault} with everything wrong in it. */
    public static List<Plateau> read(String file, Reader text) {
        return read(Table.of(file, text));
    }

    private static List<Plateau> read(Table table) {
        int cycle = table.column("cycle");
        int step = table.column("step");
        int pressure = table.column("PS1_bar");
        int flow = table.column("FS1_L_min");
        int power = table.column("EPS1_W");
        int temperature = table.column("TS1_degC");
        boolean labelled = table.header().contains("pump_leak_class");
        List<Plateau> plateaus = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            plateaus.add(new Plateau(
                    (int) table.number(row, cycle, 0, 1e9),
                    table.text(row, step),
                    BAR * table.number(row, pressure, 0, 1000),
                    LITRE_PER_MINUTE * table.number(row, flow, -50, 5000),
                    table.number(row, power, 0, 1e7),
                    CELSIUS_ZERO + Math.max(-40, table.number(row, temperature, -40, 150)),
                    labelled ? Optional.of(labels(table, row)) : Optional.empty()));
        }
        table.check();
        return List.copyOf(plateaus);
    }

    private static PlateauLabels labels(Table table, Table.Row row) {
        return new PlateauLabels(
                (int) table.number(row, table.column("pump_leak_class"), 0, 2),
                table.number(row, table.column("valve_pct"), 0, 100) / 100,
                BAR * table.number(row, table.column("accumulator_bar"), 0, 1000),
                table.number(row, table.column("unstable_flag"), 0, 1) > 0.5);
    }
}
