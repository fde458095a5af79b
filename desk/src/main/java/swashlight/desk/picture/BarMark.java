package swashlight.desk.picture;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.ui.TextAnchor;

/** One bar with its number: the first kind is filled, the second hatched, the third left open. */
final class BarMark extends AbstractXYAnnotation {
    private static final long serialVersionUID = 1L;
    private static final double HALF = 0.32; // of the distance between two bars, 1
    private static final double HATCH = 6; // px between two hatching lines
    private static final float GAP = 5; // px between bar and number

    private final int row;
    private final double from;
    private final double to;
    private final int kind;
    private final String number;

    BarMark(int row, double from, double to, int kind, String number) {
        this.row = row;
        this.from = from;
        this.to = to;
        this.kind = kind;
        this.number = number;
    }

    @Override
    public void draw(
            Graphics2D paper,
            XYPlot plot,
            Rectangle2D area,
            ValueAxis across,
            ValueAxis down,
            int renderer,
            PlotRenderingInfo info) {
        double start = across.valueToJava2D(from, area, plot.getDomainAxisEdge());
        double end = across.valueToJava2D(to, area, plot.getDomainAxisEdge());
        double top = down.valueToJava2D(row - HALF, area, plot.getRangeAxisEdge());
        double bottom = down.valueToJava2D(row + HALF, area, plot.getRangeAxisEdge());
        Rectangle2D bar = new Rectangle2D.Double(
                Math.min(start, end), Math.min(top, bottom), Math.abs(end - start), Math.abs(bottom - top));
        fill(paper, bar);
        paper.setPaint(Look.INK);
        paper.setFont(Look.SMALL);
        boolean leftwards = end < start;
        TextUtils.drawAlignedString(
                number,
                paper,
                (float) (leftwards ? bar.getMinX() - GAP : bar.getMaxX() + GAP),
                (float) bar.getCenterY(),
                leftwards ? TextAnchor.CENTER_RIGHT : TextAnchor.CENTER_LEFT);
    }

    private void fill(Graphics2D paper, Rectangle2D bar) {
        paper.setPaint(kind == 0 ? Look.hue(0) : Look.PAPER);
        paper.fill(bar);
        if (kind == 1) {
            hatch(paper, bar);
        }
        paper.setPaint(kind == 0 ? Look.INK : Look.hue(kind));
        paper.setStroke(kind == 0 ? Look.THIN : Look.THICK);
        paper.draw(bar);
    }

    private void hatch(Graphics2D paper, Rectangle2D bar) {
        Shape before = paper.getClip();
        paper.clip(bar);
        paper.setPaint(Look.hue(kind));
        paper.setStroke(Look.THIN);
        for (double x = bar.getMinX() - bar.getHeight(); x < bar.getMaxX(); x += HATCH) {
            paper.draw(new Line2D.Double(x, bar.getMaxY(), x + bar.getHeight(), bar.getMinY()));
        }
        paper.setClip(before);
    }
}
