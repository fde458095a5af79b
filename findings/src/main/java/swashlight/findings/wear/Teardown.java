package swashlight.findings.wear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.fit.NormalLaw;

/**
 * Measured parts in, leak, lost performance and verdict out.
 *
 * <p>The parts share one allowance. Each is tried alone (everything else new) and all are tried as measured. Where nine in ten machines reach
 * what is required with all as measured, all may be used again. Else parts are renewed, always the one that helps most, until nine in ten do.
 * What stays in is reused. What is renewed is to be replaced where at most one in ten reach it as they are; between, nobody can tell, but
 * a part that fails with everything else new is replaced in any case. What was not measured counts as new with its usual spread.
 */
public final class Teardown {
    private static final double SURE = 0.9; // share of machines, 1: as elsewhere in findings
    private static final double ONE_IN_TWENTY = 0.05;
    private static final double WORTH = 0.02; // share of the variance, 1
    private static final int MOST_SOURCES = 4;

    private final DriveDescription drive;
    private final Yardstick yardstick;
    private final WornMachines crowd;
    private final List<Measured> measured;
    private final DrivePapers papers;
    private final PartLeak leak;
    private final double[] vector = WornMachines.room();

    /**
     * A teardown of a drive.
     *
     * @param measured at most one of each part
     * @param papers what the maker says of its parts
     */
    public Teardown(
            DriveDescription drive,
            List<Measured> measured,
            DrivePapers papers,
            List<Requirement> requirements,
            PartLeak leak,
            TeardownOptions options) {
        this.drive = drive;
        this.yardstick = new Yardstick(drive, requirements);
        this.crowd = new WornMachines(drive, measured, options.machines(), options.seed());
        this.measured = List.copyOf(measured);
        this.papers = papers;
        this.leak = leak;
    }

    /** What it comes to. */
    public TeardownFinding finding() {
        boolean[] none = new boolean[measured.size()];
        boolean[] all = new boolean[measured.size()];
        Arrays.fill(all, true);
        int requirements = yardstick.requirements().size();
        double[][] fresh = new double[requirements][crowd.size()];
        double[][] worn = new double[requirements][crowd.size()];
        double reachesNew = reach(none, fresh, new double[crowd.size()]);
        double[] margins = new double[crowd.size()];
        double reaches = reach(all, worn, margins);
        boolean[] kept = all.clone();
        List<WearPart> renew = new ArrayList<>();
        double after = renew(kept, renew, reaches);
        List<PartFinding> parts = new ArrayList<>();
        for (int i = 0; i < measured.size(); i++) {
            parts.add(part(i, fresh, kept[i], reaches, reachesNew));
        }
        List<WearPart> unmeasured = WearPart.all().stream()
                .filter(part -> measured.stream().noneMatch(each -> each.part().equals(part)))
                .toList();
        return new TeardownFinding(
                yardstick,
                parts,
                unmeasured,
                reachesNew,
                reaches,
                after,
                renew,
                Arrays.stream(worn).map(each -> Span.of(each, ONE_IN_TWENTY)).toList(),
                Arrays.stream(fresh).map(each -> Span.of(each, ONE_IN_TWENTY)).toList(),
                sources(margins),
                crowd.size());
    }

    /** Fills a machine with some parts as measured, the rest new. */
    private void fill(int machine, boolean[] worn) {
        crowd.sound(machine, vector);
        for (int i = 0; i < worn.length; i++) {
            if (worn[i]) {
                crowd.putIn(machine, i, vector);
            }
        }
    }

    /** Share of the machines that reach it with some parts as measured, 1; fills performances by requirement and margins (1). */
    private double reach(boolean[] worn, double[][] performed, double[] margins) {
        int reached = 0;
        for (int m = 0; m < crowd.size(); m++) {
            fill(m, worn);
            margins[m] = yardstick.margin(vector);
            reached += margins[m] >= 0 ? 1 : 0;
            for (int r = 0; r < performed.length; r++) {
                performed[r][m] = yardstick.performed(r);
            }
        }
        return reached / (double) crowd.size();
    }

    /** Renews parts until nine in ten machines reach it; the share that then do, 1. */
    private double renew(boolean[] kept, List<WearPart> renewed, double reaches) {
        double now = reaches;
        double[] margins = new double[crowd.size()];
        while (now < SURE) {
            int best = -1;
            double most = -1;
            double bestShare = now;
            for (int i = 0; i < kept.length; i++) {
                if (!kept[i] || measured.get(i).part().kind() == WearKind.SPRING) {
                    continue;
                }
                kept[i] = false;
                double share = reach(kept, new double[0][0], margins);
                double middle = Span.of(margins, ONE_IN_TWENTY).middle();
                kept[i] = true;
                double merit = share + 1e-3 * Math.max(-1, middle); // the margin decides between equals
                if (merit > most) {
                    most = merit;
                    best = i;
                    bestShare = share;
                }
            }
            if (best < 0) {
                return now;
            }
            kept[best] = false;
            renewed.add(measured.get(best).part());
            now = bestShare;
        }
        return now;
    }

    private PartFinding part(int i, double[][] performedNew, boolean kept, double reaches, double reachesNew) {
        Measured each = measured.get(i);
        WearPart part = each.part();
        int count = crowd.size();
        double[] fresh = new double[count];
        double[] worn = new double[count];
        double[] leaks = new double[count];
        double[] leaksFresh = new double[count];
        double[] shares = new double[count];
        double[][] performed = new double[performedNew.length][count];
        boolean[] only = new boolean[measured.size()];
        only[i] = true;
        boolean[] others = new boolean[measured.size()];
        Arrays.fill(others, true);
        others[i] = false;
        double reachesAlone = reach(only, performed, new double[count]);
        for (int m = 0; m < count; m++) {
            crowd.sound(m, vector);
            fresh[m] = part.fresh(vector);
            leaksFresh[m] = leak.of(part, vector);
            crowd.putIn(m, i, vector);
            worn[m] = crowd.wear(m, i);
            leaks[m] = leak.of(part, vector);
            shares[m] = leaks[m] / PartLeak.delivery(vector);
        }
        int dearest = 0;
        Span cost = new Span(0, 0, 0);
        for (int r = 0; r < performed.length; r++) {
            Span lost = lost(r, performedNew[r], performed[r]);
            if (r == 0 || lost.middle() > cost.middle()) {
                cost = lost;
                dearest = r;
            }
        }
        return new PartFinding(
                each,
                Span.of(fresh, ONE_IN_TWENTY),
                Span.of(worn, ONE_IN_TWENTY),
                Span.of(leaks, ONE_IN_TWENTY),
                Span.of(leaksFresh, ONE_IN_TWENTY).middle(),
                Span.of(shares, ONE_IN_TWENTY).middle(),
                cost,
                dearest,
                limit(i, new boolean[measured.size()]),
                limit(i, others),
                reachesAlone,
                verdict(each, kept, reaches, reachesNew, reachesAlone));
    }

    private Span lost(int requirement, double[] fresh, double[] worn) {
        boolean more = yardstick.requirements().get(requirement).kind().moreIsBetter();
        double required = Math.max(yardstick.required(requirement), 1e-12);
        double[] lost = new double[fresh.length];
        for (int m = 0; m < lost.length; m++) {
            lost[m] = (more ? fresh[m] - worn[m] : worn[m] - fresh[m]) / required;
        }
        return Span.of(lost, ONE_IN_TWENTY);
    }

    private Limit limit(int i, boolean[] others) {
        Measured each = measured.get(i);
        Room room = new Room(yardstick);
        double[] limits = new double[crowd.size()];
        double[] fresh = new double[crowd.size()];
        double[] most = new double[crowd.size()];
        for (int m = 0; m < limits.length; m++) {
            fill(m, others);
            if (each.width().isPresent()) {
                vector[each.part().width().orElseThrow().index()] = each.width().getAsDouble();
            }
            fresh[m] = each.part().fresh(vector);
            most[m] = Math.max(fresh[m], each.part().most(vector));
            limits[m] = each.part().kind() == WearKind.SPRING
                    ? most[m]
                    : room.of(vector, each.part(), crowd.form(m, each.part()));
        }
        return Limit.of(limits, fresh, most);
    }

    private PartVerdict verdict(Measured each, boolean kept, double reaches, double reachesNew, double reachesAlone) {
        if (each.part().kind() == WearKind.SPRING) {
            return spring(each);
        }
        if (kept) {
            return PartVerdict.REUSE;
        }
        if (reachesNew < SURE) {
            return PartVerdict.BEYOND;
        }
        if (reachesAlone <= 1 - SURE) {
            return PartVerdict.REPLACE_ALONE;
        }
        return reaches <= 1 - SURE ? PartVerdict.REPLACE_TOGETHER : PartVerdict.CANNOT_TELL;
    }

    /** The settled drive does not ask for a spring's force: only the drive's own papers have a limit. */
    private PartVerdict spring(Measured each) {
        PartFacts known = papers.of(each.part());
        if (known.statedLimit().isEmpty()) {
            return PartVerdict.NO_LAW;
        }
        double room = (known.statedLimit().getAsDouble() - each.middle()) / Math.max(each.uncertainty(), 1e-15);
        double within = NormalLaw.below(room);
        return within >= SURE
                ? PartVerdict.REUSE_AS_STATED
                : within <= 1 - SURE ? PartVerdict.REPLACE_AS_STATED : PartVerdict.CANNOT_TELL;
    }

    /** What moves the least margin most from machine to machine, by its correlation. */
    private List<TeardownFinding.Source> sources(double[] margins) {
        int count = margins.length;
        double mean = Arrays.stream(margins).sum() / count;
        double square = 0;
        for (double margin : margins) {
            square += (margin - mean) * (margin - mean);
        }
        List<TeardownFinding.Source> sources = new ArrayList<>();
        for (int j = 0; j < crowd.names().size() && square > 0; j++) {
            double across = 0;
            double own = 0;
            for (int m = 0; m < count; m++) {
                double off = crowd.deviations(m)[j];
                across += off * (margins[m] - mean);
                own += off * off;
            }
            double share = across * across / (own * square) - 1.0 / count; // less what chance alone would show
            if (share > WORTH) {
                sources.add(new TeardownFinding.Source(crowd.names().get(j), share));
            }
        }
        sources.sort((a, b) -> Double.compare(b.share(), a.share()));
        return sources.subList(0, Math.min(MOST_SOURCES, sources.size()));
    }

    /** The drive that was opened. */
    public DriveDescription drive() {
        return drive;
    }
}
