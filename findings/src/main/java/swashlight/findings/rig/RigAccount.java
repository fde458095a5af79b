package swashlight.findings.rig;

import swashlight.findings.fit.Account;
import swashlight.findings.fit.Figures;

/** The account of a rig's healthy fit and of the classes. */
final class RigAccount {
    private RigAccount() {}

    static Account of(HealthyFlow healthy, LeakRule rule) {
        RigAssumptions assumed = healthy.assumed();
        double unit = RigAssumptions.LITRE_PER_MINUTE;
        StringBuilder noise = new StringBuilder();
        for (int s = 0; s < healthy.steps().size(); s++) {
            noise.append(s > 0 ? ", " : "")
                    .append(healthy.steps().get(s).name())
                    .append(' ')
                    .append(Figures.significant(healthy.noise(s) / unit, 2));
        }
        return Account.writer()
                .fitted(
                        "healthy",
                        "delivered flow of " + healthy.rowCount() + " healthy plateaus in " + healthy.blockCount()
                                + " blocks; no leaking cycle and no label of a leak was looked at")
                .fitted(
                        "noise",
                        "a plateau scatters by (L/min) " + noise + "; a block drifts by "
                                + Figures.significant(healthy.drift() / unit, 2))
                .assumed(
                        "oil",
                        "grade not stated: ν "
                                + Figures.significant(assumed.oil().viscosity40() * 1e6, 3)
                                + " mm²/s at 40 °C taken, "
                                + Figures.significant(assumed.otherOil().viscosity40() * 1e6, 3)
                                + " as likely; the change counts as one standard deviation")
                .assumed(
                        "thinning",
                        "the sound pump's own leak goes with viscosity to the power −"
                                + Figures.significant(assumed.thinningExponent(), 2) + " ± "
                                + Figures.significant(assumed.thinningExponentSpread(), 2)
                                + " (1 is laminar); whatever else follows the oil, the flow meter too, is inside it")
                .assumed(
                        "pressure",
                        "flow falls by " + Figures.significant(assumed.pressureSlope() / unit * 1e5, 2) + " ± "
                                + Figures.significant(assumed.pressureSlopeSpread() / unit * 1e5, 2)
                                + " L/min a bar beside slip; not fitted, because within a step flow makes the pressure")
                .assumed(
                        "slip",
                        "motor slips by " + Figures.significant(100 * assumed.slip(), 2) + " ± "
                                + Figures.significant(100 * assumed.slipSpread(), 2)
                                + " % at 2.5 kW; speed is not measured")
                .assumed(
                        "lag",
                        "gaps follow the oil's temperature after " + Figures.significant(assumed.lag() / 60, 2) + " ± "
                                + Figures.significant(assumed.lagSpread() / 60, 2) + " min")
                .assumed(
                        "unmodelled",
                        "outside the thinning seen, "
                                + Figures.significant(assumed.unmodelled() / unit, 2)
                                + " L/min a unit of thinning is added as a standard deviation")
                .assumed(
                        "classes",
                        "none below " + Figures.significant(100 * rule.some(), 2)
                                + " % of the sound flow, severe above "
                                + Figures.significant(100 * rule.severe(), 2)
                                + " %; called without doubt at a chance of "
                                + Figures.significant(rule.sure(), 2))
                .leftOut(
                        "leak-viscosity",
                        "a leak is told as it was; what it would be in other oil is the thinning exponent's")
                .leftOut("valve", "valve and accumulator condition, vibration and efficiency are not used")
                .done();
    }
}
