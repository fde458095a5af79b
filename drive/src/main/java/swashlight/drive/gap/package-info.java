/**
 * Where oil gets through: rings, faces, scores, orifices.
 *
 * <p>Idea: a laminar gap is a conductance G (m³) so that Q = G/μ · Δψ; an orifice is an area. Imports the JDK only. Begin with
 * {@link swashlight.drive.gap.AnnularGap}.
 */
package swashlight.drive.gap;
