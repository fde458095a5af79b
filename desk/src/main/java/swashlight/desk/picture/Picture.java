package swashlight.desk.picture;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.jfree.chart.JFreeChart;
import org.jfree.svg.SVGGraphics2D;
import org.jfree.svg.SVGHints;
import swashlight.desk.report.Figure;
import swashlight.desk.text.Writing;

/** Figures drawn in the words and units of a reader. */
public final class Picture {
    private static final int WIDTH = 860; // px, whole numbers so that every viewer accepts them
    private static final int CURVES = 500; // px high
    private static final int FIELD = 560; // px high
    private static final double FINEST = 100; // a hundredth of a px is as fine as a drawing says a place
    private static final int SHARP = 2; // image pixels for one of these

    private final List<Sheet> sheets;

    /** A chart and its height, px. */
    private record Sheet(JFreeChart chart, int height) {}

    private Picture(List<Sheet> sheets) {
        this.sheets = sheets;
    }

    /** The picture of some figures, one below the other. */
    public static Picture of(List<Figure> figures, Writing writing) {
        System.setProperty("java.awt.headless", "true");
        return new Picture(
                figures.stream().map(figure -> sheet(figure, writing)).toList());
    }

    private static Sheet sheet(Figure figure, Writing writing) {
        if (figure instanceof Figure.Curves curves) {
            return new Sheet(new CurveChart(curves, writing).chart(), CURVES);
        }
        if (figure instanceof Figure.Bars bars) {
            return new Sheet(new BarChart(bars, writing).chart(), BarChart.height(bars));
        }
        return new Sheet(new FieldChart((Figure.Field) figure, writing).chart(), FIELD);
    }

    private int height() {
        return sheets.stream().mapToInt(Sheet::height).sum();
    }

    private void draw(Graphics2D paper) {
        int top = 0;
        for (Sheet sheet : sheets) {
            sheet.chart().draw(paper, new Rectangle2D.Double(0, top, WIDTH, sheet.height()));
            top += sheet.height();
        }
    }

    /** As an SVG document. */
    public String svg() {
        SVGGraphics2D paper = new SVGGraphics2D(WIDTH, height());
        paper.setRenderingHint(SVGHints.KEY_TEXT_RENDERING, SVGHints.VALUE_TEXT_RENDERING_INHERIT);
        paper.setGeomDoubleConverter(length -> String.valueOf(Math.round(length * FINEST) / FINEST));
        paper.setDefsKeyPrefix("swashlight"); // no random names: the same picture is the same file
        draw(paper);
        return paper.getSVGElement(null, true, null, null, null) + "\n";
    }

    /** As a PNG image, two pixels for one. */
    public byte[] png() {
        BufferedImage image = new BufferedImage(WIDTH * SHARP, height() * SHARP, BufferedImage.TYPE_INT_RGB);
        Graphics2D paper = image.createGraphics();
        paper.scale(SHARP, SHARP);
        paper.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        draw(paper);
        paper.dispose();
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            ImageIO.write(image, "png", bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
