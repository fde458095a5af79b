/**
 * Figures as pictures: SVG drawings and PNG images in the look of an engineering drawing on light paper.
 *
 * <p>Idea: a {@link swashlight.desk.report.Figure} becomes a chart, the chart is drawn on a sheet; nothing is told by hue alone.
 * Imports report, text, the plotting library. Begin with {@code Picture}.
 */
package swashlight.desk.picture;
