package swashlight.desk.picture;

import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import swashlight.desk.report.Figure;
import swashlight.desk.report.Scale;
import swashlight.desk.text.Writing;

/** A field over two axes as bands between contour lines, each line with its number. */
final class FieldChart {
    private static final int BANDS = 9;

    private final Figure.Field figure;
    private final Writing writing;

    FieldChart(Figure.Field figure, Writing writing) {
        this.figure = figure;
        this.writing = writing;
    }

    JFreeChart chart() {
        double[] xs = shown(figure.xs(), writing.scale(figure.across().measure()));
        double[] ys = shown(figure.ys(), writing.scale(figure.up().measure()));
        Scale shade = writing.scale(figure.shade().measure());
        double[][] values = figure.values();
        for (int row = 0; row < values.length; row++) {
            values[row] = shown(values[row], shade);
        }
        NumberAxis across = Look.axis(figure.across(), writing);
        across.setRange(xs[0], xs[xs.length - 1]);
        NumberAxis up = Look.axis(figure.up(), writing);
        up.setRange(ys[0], ys[ys.length - 1]);
        XYPlot plot = new XYPlot(null, across, up, null);
        Grid grid = new Grid(xs, ys, values);
        plot.addAnnotation(new Bands(grid, levels(grid)));
        String unit = shade.unit();
        String what = writing.of(figure.title());
        JFreeChart chart = Look.chart(unit.isEmpty() ? what : what + ", " + unit, plot, false);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        return chart;
    }

    private static double[] shown(double[] si, Scale scale) {
        double[] shown = new double[si.length];
        for (int i = 0; i < si.length; i++) {
            shown[i] = scale.shown(si[i]);
        }
        return shown;
    }

    /** Round numbers (1, 2, 5 and their tens) between least and greatest. */
    private static List<Double> levels(Grid grid) {
        double span = grid.greatest() - grid.least();
        List<Double> levels = new ArrayList<>();
        if (!(span > 0)) {
            return levels;
        }
        double rough = span / BANDS;
        double ten = Math.pow(10, Math.floor(Math.log10(rough)));
        double step = rough / ten < 1.5 ? ten : rough / ten < 3.5 ? 2 * ten : rough / ten < 7.5 ? 5 * ten : 10 * ten;
        for (double k = Math.ceil(grid.least() / step); k * step < grid.greatest(); k++) {
            levels.add(k * step);
        }
        return levels;
    }
}
