/**
 * Which losses explain a bench table: speed, pressure, flow, torque and temperature in the manner of ISO 4409.
 *
 * <p>Idea: each loss is a term that may only cost, never give; sets of terms are compared by what they leave unexplained and
 * by how they foretell a speed they have not seen. Imports {@code drive.oil}, {@code drive.unit} and {@code findings.fit}. Begin
 * with {@link swashlight.findings.losses.LossFit}.
 */
package swashlight.findings.losses;
