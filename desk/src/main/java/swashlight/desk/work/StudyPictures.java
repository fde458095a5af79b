package swashlight.desk.work;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import swashlight.desk.report.Axis;
import swashlight.desk.report.Bar;
import swashlight.desk.report.Curve;
import swashlight.desk.report.Figure;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Value;
import swashlight.findings.study.Spending;
import swashlight.findings.study.StudySummary;

/** A study as pictures: promised beside come true, ranks in their band, costs side by side. */
final class StudyPictures {
    private StudyPictures() {}

    static List<Figure> of(Value title, StudySummary summary) {
        List<Figure> pictures = new ArrayList<>();
        pictures.add(reliability(title, summary));
        pictures.add(ranks(summary));
        summary.spending().map(StudyPictures::costs).ifPresent(pictures::add);
        return pictures;
    }

    private static Figure reliability(Value title, StudySummary summary) {
        List<StudySummary.Bin> bins =
                summary.reliability().stream().filter(bin -> bin.count() > 0).toList();
        double[] chance = bins.stream().mapToDouble(StudySummary.Bin::chance).toArray();
        double[] share = bins.stream().mapToDouble(StudySummary.Bin::share).toArray();
        double[] low =
                bins.stream().mapToDouble(bin -> bin.chance() - 2 * bin.error()).toArray();
        double[] high =
                bins.stream().mapToDouble(bin -> bin.chance() + 2 * bin.error()).toArray();
        return new Figure.Curves(
                title,
                new Axis(Value.word("axis.promised"), Measure.SHARE),
                new Axis(Value.word("axis.came"), Measure.SHARE),
                List.of(
                        new Curve(Value.word("curve.found"), 0, 0, chance, share),
                        new Curve(Value.word("curve.honest"), 1, 1, new double[] {0, 1}, new double[] {0, 1}),
                        new Curve(Value.word("curve.chanceLow"), 2, 2, chance, low),
                        new Curve(Value.word("curve.chanceHigh"), 2, 2, chance, high)));
    }

    /** Counts as steps, the band of even ones as level lines. */
    private static Figure ranks(StudySummary summary) {
        int bins = summary.ranks().size();
        double[] edges = new double[2 * bins];
        double[] counts = new double[2 * bins];
        for (int bin = 0; bin < bins; bin++) {
            edges[2 * bin] = bin / (double) bins;
            edges[2 * bin + 1] = (bin + 1.0) / bins;
            Arrays.fill(counts, 2 * bin, 2 * bin + 2, summary.ranks().get(bin));
        }
        return new Figure.Curves(
                Value.word("picture.study.ranks"),
                new Axis(Value.word("axis.rank"), Measure.SHARE),
                new Axis(Value.word("axis.severities"), Measure.RATIO),
                List.of(
                        new Curve(Value.word("curve.found"), 0, 0, edges, counts),
                        level("curve.even", 1, summary.evenCount()),
                        level("curve.chanceLow", 2, summary.evenCount() - summary.evenBand()),
                        level("curve.chanceHigh", 2, summary.evenCount() + summary.evenBand())));
    }

    private static Curve level(String name, int hue, double height) {
        return new Curve(Value.word(name), hue, hue, new double[] {0, 1}, new double[] {height, height});
    }

    private static Figure costs(Spending spending) {
        List<Bar> bars = new ArrayList<>();
        for (Spending.Share share : spending.shares()) {
            boolean ours = share.by() == Spending.By.MONEY || share.by() == Spending.By.ACTION;
            bars.add(new Bar(
                    Value.word("study.by." + share.by().key()),
                    0,
                    Math.rint(share.mean()),
                    ours ? 0 : share.by() == Spending.By.TRUTH ? 2 : 1));
        }
        return new Figure.Bars(
                Value.word("picture.study.costs", Value.of(spending.machines(), Measure.RATIO)),
                new Axis(Value.word("axis.cost"), Measure.RATIO),
                bars);
    }
}
