package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Value;
import swashlight.findings.wear.DrivePapers;
import swashlight.findings.wear.PartFacts;
import swashlight.findings.wear.WearPart;

/** What a drive's papers say, each with its source. */
final class PapersLines {
    private PapersLines() {}

    static Optional<Line> of(DrivePapers papers) {
        List<Line> lines = new ArrayList<>();
        for (WearPart part : WearPart.all()) {
            PartFacts facts = papers.of(part);
            Value source = Value.text(facts.source());
            if (facts.statedLimit().isPresent()) {
                lines.add(Sentence.of(
                        "papers.most",
                        WearWords.name(part),
                        WearWords.value(part, facts.statedLimit().getAsDouble()),
                        source));
            }
            if (facts.lapping().isPresent()) {
                boolean may = facts.lapping().get();
                boolean measured = may && facts.lapAtMost().isPresent();
                lines.add(Sentence.of(
                        measured ? "papers.lapAtMost" : may ? "papers.lap" : "papers.noLap",
                        WearWords.name(part),
                        source,
                        Value.of(facts.lapAtMost().orElse(0), Measure.FINE_LENGTH)));
            }
        }
        for (DrivePapers.Torque torque : papers.torques()) {
            lines.add(Sentence.of(
                    torque.order().isEmpty() ? "papers.torque" : "papers.torqueInOrder",
                    Value.text(torque.screw()),
                    Value.of(torque.torque(), Measure.TORQUE),
                    Value.text(torque.source()),
                    Value.text(torque.order())));
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Chapter("papers", lines));
    }
}
