/**
 * Fitting a law to numbers: least squares, likelihood with censored rows, non-negative terms, and what may be said after.
 *
 * <p>Idea: a fit answers with a {@link swashlight.findings.fit.FitOutcome}, converged or not, and never with NaN; what is
 * told to people is an {@link swashlight.findings.fit.Estimate} beside an {@link swashlight.findings.fit.Account}. Imports
 * the JDK only. Begin with {@link swashlight.findings.fit.LevenbergMarquardt}.
 */
package swashlight.findings.fit;
