package swashlight.findings.wear;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Parameters;
import swashlight.findings.evidence.Unknowns;

/**
 * Machines of the described make, everything unknown drawn: the sound drive, how the gauges erred (a bias is shared by all readings of a
 * gauge), and what shape the wear has. What was measured is believed as measured; a worn part is not drawn from new ones. SI.
 */
final class WornMachines {
    private final Unknowns unknowns;
    private final List<Measured> measured;
    private final List<String> names = new ArrayList<>();
    private final double[][] z; // by machine: unknowns, biases, scatters, shapes; standard deviations
    private final int scatters; // first scatter
    private final int shapes; // first shape
    private final Map<String, Integer> gauge = new HashMap<>();

    WornMachines(DriveDescription drive, List<Measured> measured, int machines, long seed) {
        this.unknowns = new Unknowns(drive, List.of());
        this.measured = List.copyOf(measured);
        for (int j = 0; j < unknowns.size(); j++) {
            names.add(unknowns.name(j));
        }
        for (Measured each : measured) {
            if (each.gauge().biasSpread() > 0 && gauge.putIfAbsent(each.gauge().key(), names.size()) == null) {
                names.add("bias of " + each.gauge().key());
            }
        }
        scatters = names.size();
        measured.forEach(each -> names.add("reading of " + each.part().key()));
        shapes = names.size();
        WearPart.all().forEach(part -> names.add("shape of " + part.key()));
        Random chance = new Random(seed);
        z = new double[machines][names.size()];
        for (double[] each : z) {
            for (int j = 0; j < each.length; j++) {
                each[j] = chance.nextGaussian();
            }
        }
    }

    int size() {
        return z.length;
    }

    /** What differs from machine to machine. */
    List<String> names() {
        return names;
    }

    /** How far a machine is off in each of them, standard deviations. */
    double[] deviations(int machine) {
        return z[machine];
    }

    List<Measured> measured() {
        return measured;
    }

    /** Fills the values (index order, SI) of a machine with new parts. */
    void sound(int machine, double[] vector) {
        double[] own = new double[unknowns.size()];
        System.arraycopy(z[machine], 0, own, 0, own.length);
        unknowns.fill(own, vector);
    }

    /** A vector for one machine. */
    static double[] room() {
        return new double[Parameters.count()];
    }

    /** True wear of a measured part on a machine, SI unit of its kind. */
    double wear(int machine, int which) {
        Measured each = measured.get(which);
        Integer bias = gauge.get(each.gauge().key());
        double shared = bias == null ? 0 : each.gauge().biasSpread() * z[machine][bias];
        double own = each.scatter() * z[machine][scatters + which];
        return Math.max(0, each.middle() - shared - own);
    }

    /** Factor of the shape of a part's wear on a machine, 1. */
    double form(int machine, WearPart part) {
        double middle = part.kind().form();
        double spread = part.kind().formSpread();
        for (Measured each : measured) {
            if (each.part().equals(part)) {
                middle = each.form();
                spread = each.formSpread();
            }
        }
        double drawn = middle + spread * z[machine][shapes + WearPart.all().indexOf(part)];
        return Math.max(0.2 * middle, part.kind().isScore() ? Math.min(1, drawn) : drawn);
    }

    /** Puts a measured part as it is into a machine's values. */
    void putIn(int machine, int which, double[] vector) {
        Measured each = measured.get(which);
        if (each.width().isPresent()) {
            vector[each.part().width().orElseThrow().index()] = each.width().getAsDouble();
        }
        each.part().wear(vector, wear(machine, which), form(machine, each.part()));
    }
}
