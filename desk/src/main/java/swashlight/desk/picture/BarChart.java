package swashlight.desk.picture;

import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.Range;
import swashlight.desk.report.Bar;
import swashlight.desk.report.Figure;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Scale;
import swashlight.desk.text.Writing;

/** Horizontal bars under their names, the first on top; kinds are told apart by hue and by hatching. */
final class BarChart {
    private static final int BAR = 26; // px for a bar and the gap to the next
    private static final int AROUND = 110; // px for title and axis
    private static final double ROOM = 2; // margins to the right of an interval, for its two numbers
    private static final double MARGIN = 0.16; // of the longest bar, free for its number, 1

    private final Figure.Bars figure;
    private final Writing writing;

    BarChart(Figure.Bars figure, Writing writing) {
        this.figure = figure;
        this.writing = writing;
    }

    static int height(Figure.Bars figure) {
        return AROUND + BAR * Math.max(2, figure.bars().size());
    }

    JFreeChart chart() {
        String[] names =
                figure.bars().stream().map(bar -> writing.of(bar.name())).toArray(String[]::new);
        SymbolAxis down = new SymbolAxis(null, names);
        down.setInverted(true);
        down.setGridBandsVisible(false);
        down.setRange(-0.6, names.length - 0.4);
        Look.dress(down);
        down.setTickMarksVisible(false);
        NumberAxis across = Look.axis(figure.across(), writing);
        across.setRange(range());
        XYPlot plot = new XYPlot(null, across, down, null);
        for (int i = 0; i < names.length; i++) {
            Bar bar = figure.bars().get(i);
            plot.addAnnotation(new BarMark(i, shown(bar.from()), shown(bar.to()), bar.kind(), number(bar)));
        }
        JFreeChart chart = Look.chart(writing.of(figure.title()), plot, false);
        plot.setRangeGridlinesVisible(false);
        plot.setDomainZeroBaselineVisible(!figure.intervals());
        plot.setDomainZeroBaselineStroke(Look.THICK);
        plot.setDomainZeroBaselinePaint(Look.INK);
        return chart;
    }

    private String number(Bar bar) {
        return figure.intervals()
                ? writing.number(bar.from(), measure()) + " … " + writing.number(bar.to(), measure())
                : writing.number(longer(bar), measure());
    }

    private static double longer(Bar bar) {
        return Math.abs(bar.to()) >= Math.abs(bar.from()) ? bar.to() : bar.from();
    }

    private Range range() {
        double low = figure.intervals() ? Double.MAX_VALUE : 0;
        double high = figure.intervals() ? -Double.MAX_VALUE : 0;
        for (Bar bar : figure.bars()) {
            low = Math.min(low, Math.min(shown(bar.from()), shown(bar.to())));
            high = Math.max(high, Math.max(shown(bar.from()), shown(bar.to())));
        }
        double margin = MARGIN * Math.max(high - low, 1e-9);
        if (figure.intervals()) {
            return new Range(low - margin, high + ROOM * margin);
        }
        return new Range(low < 0 ? low - margin : 0, high > 0 ? high + margin : 0);
    }

    private double shown(double si) {
        Scale scale = writing.scale(measure());
        return scale.shown(si);
    }

    private Measure measure() {
        return figure.across().measure();
    }
}
