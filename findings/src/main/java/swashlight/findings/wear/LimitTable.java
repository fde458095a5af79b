package swashlight.findings.wear;

import java.util.ArrayList;
import java.util.List;
import swashlight.drive.description.DriveDescription;

/**
 * How much each part of a drive may wear, derived from what its machine must do, on machines with everything unknown drawn.
 *
 * <p>Parts share the allowance. A limit <i>alone</i> spends all of it on one part; <i>alike</i>, each part that decides uses the same share
 * λ of its own room, and λ is as large as what is required allows: w = new + λ (limit alone − new).
 *
 * @param yardstick what must be done
 * @param rows in the order of the parts; springs, whose force no settled law asks for, are left out
 * @param reached share of the machines that reach it with all parts new, 1
 * @param machines drawn, 1
 */
public record LimitTable(Yardstick yardstick, List<PartLimit> rows, double reached, int machines) {
    private static final double ONE_IN_TWENTY = 0.05;
    private static final int HALVINGS = 12;

    public LimitTable {
        rows = List.copyOf(rows);
    }

    /** The table of a drive. */
    public static LimitTable of(
            DriveDescription drive, List<Requirement> requirements, PartLeak leak, int machines, long seed) {
        return new Maker(new Yardstick(drive, requirements), new WornMachines(drive, List.of(), machines, seed), leak)
                .table();
    }

    /** Works the table out. */
    private static final class Maker {
        private final Yardstick yardstick;
        private final WornMachines crowd;
        private final PartLeak leak;
        private final List<WearPart> parts;
        private final int count;
        private final double[][] fresh;
        private final double[][] most;
        private final double[][] limit;
        private final double[][] leaks; // new, then at the limit
        private final double[] share;
        private final double[] sound = WornMachines.room();
        private final double[] vector = WornMachines.room();

        Maker(Yardstick yardstick, WornMachines crowd, PartLeak leak) {
            this.yardstick = yardstick;
            this.crowd = crowd;
            this.leak = leak;
            parts = WearPart.all().stream()
                    .filter(part -> part.kind() != WearKind.SPRING)
                    .toList();
            count = crowd.size();
            fresh = new double[parts.size()][count];
            most = new double[parts.size()][count];
            limit = new double[parts.size()][count];
            leaks = new double[2 * parts.size()][count];
            share = new double[count];
        }

        LimitTable table() {
            Room room = new Room(yardstick);
            double reached = 0;
            double[] delivery = new double[count];
            for (int m = 0; m < count; m++) {
                crowd.sound(m, sound);
                delivery[m] = PartLeak.delivery(sound);
                reached += yardstick.margin(sound) >= 0 ? 1.0 / count : 0;
                for (int p = 0; p < parts.size(); p++) {
                    alone(m, p, room);
                }
            }
            List<Limit> alone = new ArrayList<>();
            for (int p = 0; p < parts.size(); p++) {
                alone.add(Limit.of(limit[p], fresh[p], most[p]));
            }
            for (int m = 0; m < count; m++) {
                share[m] = alike(m, alone);
            }
            return new LimitTable(yardstick, rows(alone, delivery), reached, count);
        }

        private void alone(int m, int p, Room room) {
            WearPart part = parts.get(p);
            double form = crowd.form(m, part);
            fresh[p][m] = part.fresh(sound);
            most[p][m] = part.most(sound);
            limit[p][m] = room.of(sound, part, form);
            leaks[2 * p][m] = leak.of(part, sound);
            System.arraycopy(sound, 0, vector, 0, sound.length);
            part.wear(vector, limit[p][m], form);
            leaks[2 * p + 1][m] = leak.of(part, vector);
        }

        /** The largest share of their rooms that all parts that decide may use at once on one machine, 1. */
        private double alike(int m, List<Limit> alone) {
            crowd.sound(m, sound);
            double low = 0;
            double high = 1;
            for (int i = 0; i < HALVINGS; i++) {
                double middle = (low + high) / 2;
                System.arraycopy(sound, 0, vector, 0, sound.length);
                for (int p = 0; p < parts.size(); p++) {
                    if (alone.get(p).decides()) {
                        WearPart part = parts.get(p);
                        double wear = fresh[p][m] + middle * (limit[p][m] - fresh[p][m]);
                        part.wear(vector, wear, crowd.form(m, part));
                    }
                }
                if (yardstick.margin(vector) >= 0) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return (low + high) / 2;
        }

        private List<PartLimit> rows(List<Limit> alone, double[] delivery) {
            List<PartLimit> rows = new ArrayList<>();
            Span shared = Span.of(share, Limit.ONE_IN);
            for (int p = 0; p < parts.size(); p++) {
                double[] alike = new double[count];
                double[] part = new double[count];
                for (int m = 0; m < count; m++) {
                    alike[m] = fresh[p][m] + share[m] * (limit[p][m] - fresh[p][m]);
                    part[m] = leaks[2 * p + 1][m] / delivery[m];
                }
                rows.add(new PartLimit(
                        parts.get(p),
                        Span.of(fresh[p], ONE_IN_TWENTY),
                        alone.get(p),
                        Span.of(alike, Limit.ONE_IN),
                        Span.of(leaks[2 * p], Limit.ONE_IN).middle(),
                        Span.of(leaks[2 * p + 1], Limit.ONE_IN).middle(),
                        Span.of(part, Limit.ONE_IN).middle(),
                        shared));
            }
            return rows;
        }
    }
}
