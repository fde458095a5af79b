package swashlight.findings.rig;

import swashlight.drive.oil.Oil;

/**
 * What the healthy law takes from outside its rows, each with its spread. They are not fitted: in one duty at one temperature
 * pressure, power and flow move together because the load valve makes them, and a fit would take effect for cause.
 *
 * @param oil the grade taken
 * @param otherOil the grade it might be as well; the change it makes is counted as one standard deviation
 * @param pressureSlope fall of delivered flow with pressure apart from slip (compression, leak), m³/(s·Pa)
 * @param pressureSlopeSpread its standard deviation, m³/(s·Pa)
 * @param slip share by which the motor's speed falls from no power to the reference power, 1
 * @param slipSpread its standard deviation, 1
 * @param thinningExponent n in leak ~ viscosity^−n of the healthy pump, 1
 * @param thinningExponentSpread its standard deviation, 1
 * @param lag time by which the gaps' temperature follows the oil's, s
 * @param lagSpread its standard deviation, s
 * @param stepSpread how far one step's temperature slope may differ from another's, per unit of thinning, m³/s
 * @param unmodelled what the law may miss, per unit of thinning away from the rows it was fitted on, m³/s
 * @param cyclePeriod time of one cycle, s
 */
public record RigAssumptions(
        Oil oil,
        Oil otherOil,
        double pressureSlope,
        double pressureSlopeSpread,
        double slip,
        double slipSpread,
        double thinningExponent,
        double thinningExponentSpread,
        double lag,
        double lagSpread,
        double stepSpread,
        double unmodelled,
        double cyclePeriod) {
    /** m³/s in one L/min (definition of the litre and the minute). */
    static final double LITRE_PER_MINUTE = 1e-3 / 60;

    private static final double BAR = 1e5;

    /** @throws IllegalArgumentException if a spread is negative or the period not positive */
    public RigAssumptions {
        double least = Math.min(
                Math.min(pressureSlopeSpread, slipSpread),
                Math.min(Math.min(thinningExponentSpread, lagSpread), Math.min(stepSpread, unmodelled)));
        if (!(least >= 0 && cyclePeriod > 0)) {
            throw new IllegalArgumentException("a spread of the rig's assumptions is " + least + " and the period "
                    + cyclePeriod + " s; spreads must not be negative and the period must be above 0");
        }
    }

    /**
     * For a small pump at 8 L/min on a four-pole motor of about 3 kW: slope between compression alone (0.0006) and the fall
     * seen from step to step less slip (0.0025 to 0.0032 L/min/bar); slip 3 % at 2.5 kW; leak laminar, exponent 1 ± 0.35;
     * gaps 2 ± 1.5 min behind the oil; grade 46, or 32; unmodelled a third of such a
     * pump's own leak. Source: common practice, spreads are ours.
     */
    public static RigAssumptions usual() {
        return new RigAssumptions(
                Oil.mineral(46e-6, 6.8e-6),
                Oil.mineral(32e-6, 5.4e-6),
                0.0022 * LITRE_PER_MINUTE / BAR,
                0.0011 * LITRE_PER_MINUTE / BAR,
                0.03,
                0.012,
                1,
                0.35,
                120,
                90,
                0.02 * LITRE_PER_MINUTE,
                0.025 * LITRE_PER_MINUTE,
                60);
    }

    /** The viscosity law at the values taken. */
    HealthyLaw law() {
        return new HealthyLaw(oil, pressureSlope, slip, thinningExponent, lag);
    }

    /** The law with each thing taken from outside moved by its spread, one at a time. */
    HealthyLaw[] moved() {
        return new HealthyLaw[] {
            new HealthyLaw(oil, pressureSlope + pressureSlopeSpread, slip, thinningExponent, lag),
            new HealthyLaw(oil, pressureSlope, slip + slipSpread, thinningExponent, lag),
            new HealthyLaw(oil, pressureSlope, slip, thinningExponent + thinningExponentSpread, lag),
            new HealthyLaw(oil, pressureSlope, slip, thinningExponent, lag + lagSpread),
            new HealthyLaw(otherOil, pressureSlope, slip, thinningExponent, lag)
        };
    }
}
