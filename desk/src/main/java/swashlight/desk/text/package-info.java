/**
 * Reports as text, JSON and CSV, and the catalogue of every word a reader sees.
 *
 * <p>Idea: {@link swashlight.desk.text.Words} turns keys into words, {@link swashlight.desk.text.Digits} numbers into digits; the three
 * pages only lay out. Imports report. Begin with {@code TextPage}.
 */
package swashlight.desk.text;
