package swashlight.findings.losses;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swashlight.drive.unit.LossModel;
import swashlight.findings.fit.Account;
import swashlight.findings.fit.Estimate;
import swashlight.findings.fit.Figures;

/**
 * Fits displacement and losses to a bench table. Flow gives displacement and flow losses together; torque then gives torque
 * losses with that displacement, whose own spread is added where it matters (rubbing cannot be told from displacement).
 */
public final class LossFit {
    private static final double TURN = 2 * Math.PI;
    private static final double CUBIC_CENTIMETRE = 1e-6;
    private static final int FEWEST_ROWS = 8;

    private final BenchRun test;
    private final int[] group;
    private final List<Estimate> estimates = new ArrayList<>();
    private final Account.Writer account = Account.writer();

    private LossFit(BenchRun test) {
        this.test = test;
        group = groups(test.points());
    }

    /**
     * What explains a table.
     *
     * @throws IllegalArgumentException with fewer than eight rows or one speed only
     */
    public static LossFinding of(BenchRun test) {
        if (test.points().size() < FEWEST_ROWS) {
            throw new IllegalArgumentException(
                    "bench table: " + test.points().size() + " rows; " + FEWEST_ROWS + " or more are needed");
        }
        return new LossFit(test).finding();
    }

    private LossFinding finding() {
        estimates.add(DerivedCapacity.of(test));
        TermFit flow = flowFit();
        List<TermSet> flowSets = flow.compare();
        TermFit.Solved best = flow.solve(flow.in(flowSets.get(0).terms()));
        double displacement = best.coefficients()[0];
        TermFit.Interval spread = flow.interval(best, 0);
        estimates.add(new Estimate(
                "displacement",
                displacement / CUBIC_CENTIMETRE,
                spread.low() / CUBIC_CENTIMETRE,
                spread.high() / CUBIC_CENTIMETRE,
                Estimate.USUAL_CONFIDENCE,
                "cm³/rev",
                "displacement a turn at full stroke, fitted beside the flow losses"));
        double[] flowLosses = losses(flow, best, 1, List.of(FlowTerm.values()), displacement, 0);
        beliefs(flowSets, List.of(FlowTerm.values()));
        double uncertain = (spread.high() - spread.low()) / 2 / displacement;
        double[] torqueLosses = new double[TorqueTerm.values().length];
        List<TermSet> torqueSets = List.of();
        if (test.points().stream().allMatch(point -> point.torque().isPresent())) {
            TermFit torque = torqueFit(displacement);
            torqueSets = torque.compare();
            TermFit.Solved bestTorque = torque.solve(torque.in(torqueSets.get(0).terms()));
            torqueLosses = losses(torque, bestTorque, 0, List.of(TorqueTerm.values()), displacement, uncertain);
            beliefs(torqueSets, List.of(TorqueTerm.values()));
        } else {
            account.leftOut("torque", "torque is missing in some rows, so no torque loss is fitted");
        }
        writeAccount(uncertain);
        double squeeze = flowLosses[FlowTerm.COMPRESSION.ordinal()];
        LossModel model = new LossModel(
                displacement,
                flowLosses[FlowTerm.LAMINAR.ordinal()],
                flowLosses[FlowTerm.TURBULENT.ordinal()],
                torqueLosses[TorqueTerm.VISCOUS.ordinal()],
                torqueLosses[TorqueTerm.COULOMB.ordinal()],
                torqueLosses[TorqueTerm.HYDRODYNAMIC.ordinal()]);
        return new LossFinding(
                estimates,
                flowSets,
                torqueSets,
                model,
                squeeze > 0 ? Optional.of(1 / squeeze) : Optional.empty(),
                account.done());
    }

    private TermFit flowFit() {
        int n = test.points().size();
        double[][] free = new double[n][1];
        double[][] losses = new double[n][FlowTerm.values().length];
        double[] target = new double[n];
        for (int i = 0; i < n; i++) {
            BenchPoint point = test.points().get(i);
            free[i][0] = point.share() * point.speed() / TURN;
            target[i] = point.flow();
            for (FlowTerm term : FlowTerm.values()) {
                losses[i][term.ordinal()] = test.kind().flowSign() * term.at(point, test);
            }
        }
        return new TermFit(free, losses, target, group, List.of(FlowTerm.values()));
    }

    private TermFit torqueFit(double displacement) {
        int n = test.points().size();
        double[][] losses = new double[n][TorqueTerm.values().length];
        double[] target = new double[n];
        for (int i = 0; i < n; i++) {
            BenchPoint point = test.points().get(i);
            double ideal = point.share() * displacement / TURN * point.pressureDifference();
            target[i] = test.kind().torqueSign() * (point.torque().orElse(0) - ideal);
            for (TorqueTerm term : TorqueTerm.values()) {
                losses[i][term.ordinal()] = term.at(point, test);
            }
        }
        return new TermFit(new double[n][0], losses, target, group, List.of(TorqueTerm.values()));
    }

    /** Published coefficients of the best set, and an estimate each. */
    private double[] losses(
            TermFit fit,
            TermFit.Solved best,
            int free,
            List<? extends LossTerm> terms,
            double displacement,
            double uncertain) {
        double[] published = new double[terms.size()];
        for (int j = 0; j < terms.size(); j++) {
            LossTerm term = terms.get(j);
            if (!best.in()[j]) {
                continue;
            }
            double scale = term.scale(displacement);
            double value = best.coefficients()[free + j] / scale;
            TermFit.Interval interval = fit.interval(best, free + j);
            double extra = term == TorqueTerm.COULOMB ? uncertain : 0;
            double below = value - interval.low() / scale;
            double above = interval.high() / scale - value;
            published[j] = value;
            estimates.add(new Estimate(
                    term.key(),
                    value,
                    Math.max(0, value - Math.sqrt(below * below + extra * extra)),
                    value + Math.sqrt(above * above + extra * extra),
                    Estimate.USUAL_CONFIDENCE,
                    term.unit(),
                    term.words()));
        }
        return published;
    }

    private void beliefs(List<TermSet> sets, List<? extends LossTerm> terms) {
        for (LossTerm term : terms) {
            double belief = 0;
            for (TermSet set : sets) {
                belief += set.terms().contains(term.key()) ? set.weight() : 0;
            }
            account.fitted(
                    "belief-" + term.key(),
                    Figures.fixed(100 * belief, 0) + " % of the belief lies on sets with this loss: " + term.words());
        }
    }

    private void writeAccount(double uncertain) {
        account.given("rows", test.points().size() + " rows, each taken as one independent reading of equal error");
        account.given(
                "oil",
                "ν " + Figures.significant(test.oil().viscosity40() * 1e6, 4) + " mm²/s at 40 °C, "
                        + Figures.significant(test.oil().viscosity100() * 1e6, 4)
                        + " at 100 °C; viscosity at atmospheric pressure and the row's temperature");
        account.assumed(
                "losses",
                "no loss is negative; sets are weighed by AICc and shown with their error at what was left out");
        account.assumed(
                "torque-displacement",
                "torque losses take the displacement from flow; its ± " + Figures.significant(100 * uncertain, 2)
                        + " % is added to the rubbing coefficient's interval");
        account.leftOut("temperature-rise", "oil warms through the unit; one temperature a row is used");
    }

    /** Rows of one speed (else of one pressure) are left out together. */
    private static int[] groups(List<BenchPoint> points) {
        int[] bySpeed = groups(points, true);
        int most = 0;
        for (int one : bySpeed) {
            most = Math.max(most, one);
        }
        return most >= 2 ? bySpeed : groups(points, false);
    }

    private static int[] groups(List<BenchPoint> points, boolean speed) {
        List<Double> levels = new ArrayList<>();
        int[] group = new int[points.size()];
        for (int i = 0; i < group.length; i++) {
            double value = speed ? points.get(i).speed() : points.get(i).pressureDifference() + 1e5;
            int found = -1;
            for (int g = 0; g < levels.size() && found < 0; g++) {
                found = Math.abs(value - levels.get(g)) < 0.03 * levels.get(g) ? g : -1;
            }
            if (found < 0) {
                levels.add(value);
                found = levels.size() - 1;
            }
            group[i] = found;
        }
        return group;
    }
}
