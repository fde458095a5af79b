/**
 * The inner leak of a pump on a rig that repeats one load cycle, from delivered flow, pressure, power and oil temperature.
 *
 * <p>Idea: what a healthy pump would deliver at these conditions, less what was delivered, is the leak; only healthy cycles are
 * fitted, and their law carries the oil's temperature through its viscosity. Imports {@code drive.oil} and
 * {@code findings.fit}. Begin with {@link swashlight.findings.rig.HealthyFit}.
 */
package swashlight.findings.rig;
