package swashlight.findings.drain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swashlight.findings.fit.Account;
import swashlight.findings.fit.Estimate;
import swashlight.findings.fit.Figures;
import swashlight.findings.fit.FitOutcome;

/**
 * What a drain test says.
 *
 * @param outcome how the fit ended
 * @param estimates the law and the comparisons; empty if the fit did not converge
 * @param account what was assumed, given, fitted, left out
 */
public record DrainFinding(FitOutcome outcome, List<Estimate> estimates, Account account) {
    private static final String MINUTE = "L/min";

    /** Keeps its own copy of the estimates. */
    public DrainFinding {
        estimates = List.copyOf(estimates);
    }

    /**
     * The estimate with a key, if there is one.
     *
     * @param key such as pressure-exponent
     */
    public Optional<Estimate> estimate(String key) {
        return estimates.stream().filter(e -> e.key().equals(key)).findFirst();
    }

    /** The whole finding as text. */
    public String text() {
        StringBuilder text = new StringBuilder("Leak law of the case drain: ")
                .append(outcome.line())
                .append('\n');
        for (Estimate estimate : estimates) {
            text.append("  ").append(estimate.line()).append('\n');
        }
        return text.append(account.text()).toString();
    }

    static DrainFinding withoutLaw(FitOutcome outcome, LeakRows rows, DrainAssumptions assumed) {
        Account.Writer account = Account.writer();
        DrainAccount.write(account, rows, assumed);
        return new DrainFinding(outcome, List.of(), account.done());
    }

    static DrainFinding of(
            FitOutcome outcome, LeakRows rows, DrainAssumptions assumed, LawSpread spread, SerialErrors errors) {
        double[] point = outcome.point();
        List<Estimate> estimates = new ArrayList<>();
        String where = " at " + Figures.significant(assumed.referencePressure() / 1e5, 4) + " bar and the viscosity of "
                + Figures.significant(assumed.referenceTemperature() - 273.15, 4) + " °C";
        double level = point[0] - Math.log(DrainAssumptions.LITRE_PER_MINUTE);
        double levelWidth = spread.halfWidth(unit(point, 0));
        String first = rows.states().get(0);
        estimates.add(Estimate.positive("leak", level, levelWidth, MINUTE, "leak, " + first + "," + where));
        estimates.add(Estimate.positive(
                "conductance",
                level - Math.log(assumed.referencePressure() / 1e5),
                levelWidth,
                "L/min/bar",
                "leak over pressure difference, " + first + "," + where));
        estimates.add(linear("pressure-exponent", point, unit(point, 1), spread, "m in leak ~ pressure^m, " + first));
        estimates.add(linear("viscosity-exponent", point, unit(point, 2), spread, "n in leak ~ viscosity^-n"));
        for (int s = 1; s < rows.states().size(); s++) {
            addState(estimates, rows.states().get(s), LeakRows.offsetOf(s), point, spread, where);
        }
        Account.Writer account = Account.writer();
        DrainAccount.write(account, rows, assumed);
        account.fitted(
                "scatter",
                "a row scatters by " + Figures.significant(100 * errors.deviation(), 2)
                        + " %, and its error repeats in the next by " + Figures.significant(errors.correlation(), 2)
                        + " (restricted likelihood), so the " + rows.metered().length
                        + " metered rows tell as much about the scatter as "
                        + Figures.significant(errors.effective(rows.metered().length), 2) + " apart would");
        return new DrainFinding(outcome, estimates, account.done());
    }

    private static void addState(
            List<Estimate> estimates, String name, int k, double[] point, LawSpread spread, String where) {
        double[] exponent = unit(point, 1);
        exponent[k + 1] = 1;
        estimates.add(linear("pressure-exponent-" + name, point, exponent, spread, "m in leak ~ pressure^m, " + name));
        estimates.add(linear(
                "exponent-change-" + name,
                point,
                unit(point, k + 1),
                spread,
                "exponent of " + name + " less the first"));
        estimates.add(Estimate.positive(
                "leak-ratio-" + name,
                point[k],
                spread.halfWidth(unit(point, k)),
                "1",
                "times the leak of the first state," + where));
    }

    private static Estimate linear(String key, double[] point, double[] weights, LawSpread spread, String meaning) {
        double value = 0;
        for (int j = 0; j < point.length; j++) {
            value += weights[j] * point[j];
        }
        return Estimate.symmetric(key, value, spread.halfWidth(weights), "1", meaning);
    }

    private static double[] unit(double[] point, int index) {
        double[] weights = new double[point.length];
        weights[index] = 1;
        return weights;
    }
}
