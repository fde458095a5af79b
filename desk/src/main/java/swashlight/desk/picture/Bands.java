package swashlight.desk.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.ui.TextAnchor;

/** Bands from light to dark between contour lines; each level is one area laid over the one below, so no seam shows. */
final class Bands extends AbstractXYAnnotation {
    private static final long serialVersionUID = 1L;
    private static final Color LIGHT = new Color(0xf4, 0xf6, 0xf2);
    private static final Color DARK = new Color(0x3f, 0x86, 0xb5);

    private final transient Grid grid;
    private final transient List<Double> levels;

    Bands(Grid grid, List<Double> levels) {
        this.grid = grid;
        this.levels = levels;
    }

    @Override
    public void draw(
            Graphics2D paper,
            XYPlot plot,
            Rectangle2D area,
            ValueAxis across,
            ValueAxis up,
            int renderer,
            PlotRenderingInfo info) {
        Shape before = paper.getClip();
        paper.clip(area);
        Placing placing = corner -> new Point2D.Double(
                across.valueToJava2D(corner.x(), area, plot.getDomainAxisEdge()),
                up.valueToJava2D(corner.y(), area, plot.getRangeAxisEdge()));
        List<List<Grid.Corner>> triangles = grid.triangles();
        fill(paper, triangles, placing, Double.NEGATIVE_INFINITY, LIGHT);
        for (int i = 0; i < levels.size(); i++) {
            fill(paper, triangles, placing, levels.get(i), tone((i + 1.0) / levels.size()));
        }
        List<Rectangle2D> taken = new ArrayList<>();
        boolean rising = grid.changesMostUpwards();
        for (double level : levels) {
            contour(paper, triangles, placing, level, area, taken, rising);
        }
        paper.setClip(before);
    }

    private static void fill(
            Graphics2D paper, List<List<Grid.Corner>> triangles, Placing placing, double level, Color color) {
        Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
        for (List<Grid.Corner> triangle : triangles) {
            List<Grid.Corner> part = Grid.above(triangle, level);
            for (int i = 0; i < part.size(); i++) {
                Point2D at = placing.of(part.get(i));
                if (i == 0) {
                    path.moveTo(at.getX(), at.getY());
                } else {
                    path.lineTo(at.getX(), at.getY());
                }
            }
            if (!part.isEmpty()) {
                path.closePath();
            }
        }
        paper.setPaint(color);
        paper.fill(path);
    }

    private void contour(
            Graphics2D paper,
            List<List<Grid.Corner>> triangles,
            Placing placing,
            double level,
            Rectangle2D area,
            List<Rectangle2D> taken,
            boolean rising) {
        Path2D path = new Path2D.Double();
        Rectangle2D best = null;
        double nearest = Double.POSITIVE_INFINITY;
        for (List<Grid.Corner> triangle : triangles) {
            List<Grid.Corner> ends = Grid.line(triangle, level);
            if (ends.size() < 2) {
                continue;
            }
            Point2D from = placing.of(ends.get(0));
            Point2D to = placing.of(ends.get(1));
            path.moveTo(from.getX(), from.getY());
            path.lineTo(to.getX(), to.getY());
            Rectangle2D label = new Rectangle2D.Double(from.getX() - 16, from.getY() - 8, 32, 16);
            double distance = fromDiagonal(from, area, rising);
            if (distance < nearest && area.contains(label) && taken.stream().noneMatch(label::intersects)) {
                nearest = distance;
                best = label;
            }
        }
        paper.setPaint(Look.INK);
        paper.setStroke(Look.THIN);
        paper.draw(path);
        if (best != null) {
            taken.add(best);
            label(paper, number(level), best);
        }
    }

    /** How far a place is from the diagonal along which the values change most, 1. */
    private static double fromDiagonal(Point2D place, Rectangle2D area, boolean rising) {
        double right = (place.getX() - area.getMinX()) / area.getWidth();
        double up = (area.getMaxY() - place.getY()) / area.getHeight();
        return Math.abs(rising ? right - up : right + up - 1);
    }

    private String number(double level) {
        double step = levels.size() > 1 ? levels.get(1) - levels.get(0) : 1;
        return RoundSteps.numbers(Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9)))
                .format(level);
    }

    private static void label(Graphics2D paper, String text, Rectangle2D place) {
        paper.setFont(Look.SMALL);
        paper.setPaint(Look.PAPER);
        paper.fill(place);
        paper.setPaint(Look.INK);
        TextUtils.drawAlignedString(
                text, paper, (float) place.getCenterX(), (float) place.getCenterY(), TextAnchor.CENTER);
    }

    private static Color tone(double share) {
        return new Color(
                between(LIGHT.getRed(), DARK.getRed(), share),
                between(LIGHT.getGreen(), DARK.getGreen(), share),
                between(LIGHT.getBlue(), DARK.getBlue(), share));
    }

    private static int between(int low, int high, double share) {
        return (int) (low + share * (high - low) + 0.5);
    }

    /** From the chart's numbers to the paper. */
    private interface Placing {
        Point2D of(Grid.Corner corner);
    }
}
