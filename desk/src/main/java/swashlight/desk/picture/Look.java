package swashlight.desk.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleInsets;
import swashlight.desk.report.Axis;
import swashlight.desk.text.Writing;

/**
 * The look of every picture: light paper, thin and thick lines as in ISO 128, and colours that stay apart for every kind of eye.
 *
 * <p>Colours: Okabe and Ito, Color Universal Design, 2008 (from memory).
 */
final class Look {
    static final Color PAPER = new Color(0xfd, 0xfc, 0xf8);
    static final Color INK = new Color(0x22, 0x22, 0x22);
    static final Color FAINT = new Color(0xd9, 0xd6, 0xcc);
    static final List<Color> HUES = List.of(
            new Color(0x00, 0x72, 0xb2),
            new Color(0xd5, 0x5e, 0x00),
            new Color(0x00, 0x9e, 0x73),
            new Color(0xaa, 0x44, 0x99),
            new Color(0x66, 0x66, 0x66),
            new Color(0xb0, 0x80, 0x00));
    private static final RectangleInsets AIR =
            new RectangleInsets(6, 8, 6, 8); // px around a number: fewer, calmer steps
    static final Font TEXT = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
    static final Font SMALL = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
    static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 15);
    static final BasicStroke THIN = new BasicStroke(0.7f);
    static final BasicStroke THICK = new BasicStroke(1.4f);
    private static final float[][] PATTERNS = {{}, {9, 4}, {9, 3, 2, 3}, {2, 3}, {14, 3, 2, 3, 2, 3}
    }; // px drawn, px left out

    private Look() {}

    /** A hue, the first again after the last. */
    static Color hue(int number) {
        return HUES.get(number % HUES.size());
    }

    /** A line pattern: solid, dashed, chain, dotted, double-dotted chain. */
    static BasicStroke line(int pattern) {
        float[] dashes = PATTERNS[pattern % PATTERNS.length];
        return dashes.length == 0
                ? new BasicStroke(2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
                : new BasicStroke(2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10f, dashes, 0f);
    }

    /** An axis with its name, its unit and a real minus. */
    static NumberAxis axis(Axis axis, Writing writing) {
        String unit = writing.scale(axis.measure()).unit();
        String name = writing.of(axis.name());
        NumberAxis drawn = new NumberAxis(unit.isEmpty() ? name : name + ", " + unit);
        drawn.setStandardTickUnits(new RoundSteps());
        drawn.setAutoRangeIncludesZero(false);
        dress(drawn);
        return drawn;
    }

    static void dress(ValueAxis axis) {
        axis.setLabelFont(TEXT);
        axis.setTickLabelFont(SMALL);
        axis.setLabelPaint(INK);
        axis.setTickLabelPaint(INK);
        axis.setAxisLinePaint(INK);
        axis.setAxisLineStroke(THICK);
        axis.setTickMarkPaint(INK);
        axis.setTickMarkStroke(THIN);
        axis.setTickMarkInsideLength(4);
        axis.setTickMarkOutsideLength(0);
        axis.setTickLabelInsets(AIR);
    }

    /** A chart of a plot on paper, its title to the left. */
    static JFreeChart chart(String title, XYPlot plot, boolean legend) {
        plot.setBackgroundPaint(PAPER);
        plot.setOutlinePaint(INK);
        plot.setOutlineStroke(THICK);
        plot.setDomainGridlinePaint(FAINT);
        plot.setRangeGridlinePaint(FAINT);
        plot.setDomainGridlineStroke(THIN);
        plot.setRangeGridlineStroke(THIN);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        JFreeChart chart = new JFreeChart(null, TITLE, plot, legend);
        chart.setBackgroundPaint(PAPER);
        chart.setPadding(new RectangleInsets(10, 12, 10, 18));
        TextTitle heading = new TextTitle(title, TITLE);
        heading.setPaint(INK);
        heading.setHorizontalAlignment(HorizontalAlignment.LEFT);
        heading.setPadding(0, 4, 8, 0);
        chart.setTitle(heading);
        return chart;
    }
}
