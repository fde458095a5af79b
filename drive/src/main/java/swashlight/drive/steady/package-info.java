/**
 * The steady view: what a drive does once it has settled, with every litre a minute and every watt accounted for.
 *
 * <p>Idea: {@link swashlight.drive.steady.SteadyDrive} answers a {@link swashlight.drive.steady.Duty}; inside, one kernel of flat
 * numbers solves flow and torque balances by a safeguarded Newton. Imports oil, gap, description. Begin with {@code SteadyDrive}.
 */
package swashlight.drive.steady;
