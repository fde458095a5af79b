package swashlight.desk.picture;

import java.awt.geom.Line2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import swashlight.desk.report.Curve;
import swashlight.desk.report.Figure;
import swashlight.desk.report.Scale;
import swashlight.desk.text.Writing;

/** Curves over a common axis, told apart by hue and by line pattern. */
final class CurveChart {
    private static final double LEGEND_LINE = 17; // px, half the sample of a line in the legend

    private static final double NEAR = 0.4; // least over greatest, 1

    private final Figure.Curves figure;
    private final Writing writing;

    CurveChart(Figure.Curves figure, Writing writing) {
        this.figure = figure;
        this.writing = writing;
    }

    JFreeChart chart() {
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, false);
        lines.setDrawSeriesLineAsPath(true);
        lines.setLegendLine(new Line2D.Double(-LEGEND_LINE, 0, LEGEND_LINE, 0));
        for (int i = 0; i < figure.curves().size(); i++) {
            Curve curve = figure.curves().get(i);
            data.addSeries(series(i, curve));
            lines.setSeriesPaint(i, Look.hue(curve.hue()));
            lines.setSeriesStroke(i, Look.line(curve.stroke()));
        }
        NumberAxis up = Look.axis(figure.up(), writing);
        up.setAutoRangeIncludesZero(nearZero());
        NumberAxis across = Look.axis(figure.across(), writing);
        across.setLowerMargin(0);
        across.setUpperMargin(0);
        XYPlot plot = new XYPlot(data, across, up, lines);
        plot.setRangeZeroBaselineVisible(true);
        plot.setRangeZeroBaselineStroke(Look.THICK);
        plot.setRangeZeroBaselinePaint(Look.INK);
        JFreeChart chart =
                Look.chart(writing.of(figure.title()), plot, figure.curves().size() > 1);
        LegendTitle legend = chart.getLegend();
        if (legend != null) {
            legend.setPosition(RectangleEdge.BOTTOM);
            legend.setItemFont(Look.TEXT);
            legend.setItemPaint(Look.INK);
            legend.setBackgroundPaint(null);
            legend.setFrame(BlockBorder.NONE);
        }
        return chart;
    }

    /** Zero belongs in the picture where the values come near it, seen from their greatest. */
    private boolean nearZero() {
        Scale up = writing.scale(figure.up().measure());
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        for (Curve curve : figure.curves()) {
            for (double y : curve.ys()) {
                double shown = up.shown(y);
                least = shown < least ? shown : least;
                greatest = shown > greatest ? shown : greatest;
            }
        }
        return least <= 0 || least < NEAR * greatest;
    }

    private XYSeries series(int number, Curve curve) {
        Scale across = writing.scale(figure.across().measure());
        Scale up = writing.scale(figure.up().measure());
        XYSeries series = new XYSeries(new Name(number, writing.of(curve.name())), false);
        double[] xs = curve.xs();
        double[] ys = curve.ys();
        for (int i = 0; i < xs.length; i++) {
            series.add(across.shown(xs[i]), Double.isNaN(ys[i]) ? null : (Double) up.shown(ys[i]));
        }
        return series;
    }

    /** Series keys must differ even where two curves bear the same name. */
    private record Name(int number, String name) implements Comparable<Name> {
        @Override
        public int compareTo(Name other) {
            return Integer.compare(number, other.number);
        }

        @Override
        public String toString() {
            return name;
        }
    }
}
