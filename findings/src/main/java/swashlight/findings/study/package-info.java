/**
 * Does the finding keep its promises? Machines are drawn from the model with everything unknown about them, measured with the errors that
 * instruments have, found, and compared with what they are.
 *
 * <p>Idea: a {@link swashlight.findings.study.Simulator} makes a {@link swashlight.findings.study.Simulated} case from a number; a
 * {@link swashlight.findings.study.StudyRow} says how its finding stands to the truth; a {@link swashlight.findings.study.StudySummary} adds
 * rows up. Rows know nothing of each other, so that a study can be stopped and taken up again.
 */
package swashlight.findings.study;
