package swashlight.desk.picture;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import org.jfree.chart.JFreeChart;
import org.jfree.svg.SVGGraphics2D;
import org.jfree.svg.SVGHints;
import swashlight.desk.report.Figure;
import swashlight.desk.text.Writing;

/** A figure drawn in the words and units of a reader. */
public final class Picture {
    private static final int WIDTH = 860; // px, whole numbers so that every viewer accepts them
    private static final int SHARP = 2; // image pixels for one of these

    private final JFreeChart chart;
    private final int height;

    private Picture(JFreeChart chart, int height) {
        this.chart = chart;
        this.height = height;
    }

    /** The picture of a figure. */
    public static Picture of(Figure figure, Writing writing) {
        System.setProperty("java.awt.headless", "true");
        if (figure instanceof Figure.Curves curves) {
            return new Picture(new CurveChart(curves, writing).chart(), 520);
        }
        if (figure instanceof Figure.Bars bars) {
            return new Picture(new BarChart(bars, writing).chart(), BarChart.height(bars));
        }
        return new Picture(new FieldChart((Figure.Field) figure, writing).chart(), 560);
    }

    /** As an SVG document. */
    public String svg() {
        SVGGraphics2D paper = new SVGGraphics2D(WIDTH, height);
        paper.setRenderingHint(SVGHints.KEY_TEXT_RENDERING, SVGHints.VALUE_TEXT_RENDERING_INHERIT);
        paper.setDefsKeyPrefix("swashlight"); // no random names: the same picture is the same file
        chart.draw(paper, new Rectangle2D.Double(0, 0, WIDTH, height));
        return paper.getSVGElement(null, true, null, null, null) + "\n";
    }

    /** As a PNG image, two pixels for one. */
    public byte[] png() {
        BufferedImage image = new BufferedImage(WIDTH * SHARP, height * SHARP, BufferedImage.TYPE_INT_RGB);
        Graphics2D paper = image.createGraphics();
        paper.scale(SHARP, SHARP);
        paper.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        chart.draw(paper, new Rectangle2D.Double(0, 0, WIDTH, height));
        paper.dispose();
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            ImageIO.write(image, "png", bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
