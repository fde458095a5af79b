/**
 * What the desk answers, as values: one tree of keyed lines that text, JSON and CSV are drawn from, and pictures as data.
 *
 * <p>Idea: a {@link swashlight.desk.report.Report} names things by stable keys and carries numbers in SI with their
 * {@link swashlight.desk.report.Measure}; words and units come later. Imports drive. Begin with {@code Report}.
 */
package swashlight.desk.report;
