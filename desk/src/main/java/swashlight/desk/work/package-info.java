/**
 * The work itself, once: every question the program answers is a method of {@link swashlight.desk.work.Desk}.
 *
 * <p>Idea: values in, an {@link swashlight.desk.work.Outcome} out; the command line and later the web server only carry them to and fro.
 * Imports drive, findings, files, report. Begin with {@code Desk}.
 */
package swashlight.desk.work;
