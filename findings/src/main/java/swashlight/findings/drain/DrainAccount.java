package swashlight.findings.drain;

import swashlight.findings.fit.Account;
import swashlight.findings.fit.Figures;

/** The lines of a drain fit's account that do not depend on how the fit ended. */
final class DrainAccount {
    private DrainAccount() {}

    static void write(Account.Writer account, LeakRows rows, DrainAssumptions assumed) {
        double start = assumed.meterStart() / DrainAssumptions.LITRE_PER_MINUTE;
        double spread = assumed.meterStartSpread() / DrainAssumptions.LITRE_PER_MINUTE;
        account.given(
                "dead-band",
                "the drain meter starts at " + Figures.significant(start, 3) + " ± " + Figures.significant(spread, 2)
                        + " L/min; " + rows.censoredCount() + " of " + rows.rows()
                        + " rows read below it and count as \"less than the start\", not as zero and not as missing");
        account.assumed(
                "oil",
                "ν " + Figures.significant(assumed.oil().viscosity40() * 1e6, 3) + " mm²/s at 40 °C, "
                        + Figures.significant(assumed.oil().viscosity100() * 1e6, 3)
                        + " at 100 °C. Grade and viscosity exponent are confounded: a grade whose viscosity changes "
                        + "faster with temperature gives a smaller exponent for the same readings; "
                        + assumed.otherOils().size() + " other grades are counted into the interval");
        account.assumed(
                "gap-temperature",
                "the oil in the gaps is at outlet + " + Figures.significant(assumed.gapShare(), 2)
                        + " × (case drain − outlet), share known to ± "
                        + Figures.significant(assumed.gapShareSpread(), 2)
                        + ": 1 is the case-drain temperature, the metal's own");
        account.assumed(
                "repeatability",
                "each unbroken run may stand off by " + Figures.significant(100 * assumed.repeatability(), 2)
                        + " % as a whole; with one run a state this cannot be seen in the rows");
        account.leftOut(
                "viscosity-pressure",
                "viscosity is taken at atmospheric pressure; its rise with pressure is inside the pressure exponent");
        account.leftOut("windage", "speed is one and the same in all rows, so nothing is said about it");
    }
}
