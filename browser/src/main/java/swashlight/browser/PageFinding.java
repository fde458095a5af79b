package swashlight.browser;

import java.util.List;
import java.util.stream.DoubleStream;
import org.teavm.jso.JSExport;
import swashlight.findings.finding.CauseFinding;
import swashlight.findings.finding.Finding;
import swashlight.findings.finding.NextReading;
import swashlight.findings.finding.Verdict;

/** What a case comes to. */
public final class PageFinding {
    private final Finding finding;
    private final List<CauseFinding> causes;

    PageFinding(Finding finding) {
        this.finding = finding;
        this.causes = finding.causes();
    }

    /** The finding in plain words. */
    @JSExport
    public String words() {
        return finding.conclusion().words();
    }

    /** Key of the likeliest action. */
    @JSExport
    public String action() {
        return finding.conclusion().action().key();
    }

    /** True when that action is as good as certain. */
    @JSExport
    public boolean sure() {
        return finding.conclusion().verdict() == Verdict.THIS;
    }

    /** Keys of all actions, likeliest first. */
    @JSExport
    public String[] actions() {
        return PageWords.texts(finding.actions(), action -> action.action().key());
    }

    /** Their probabilities. */
    @JSExport
    public double[] actionProbabilities() {
        return finding.actions().stream()
                .mapToDouble(action -> action.probability())
                .toArray();
    }

    /** Keys of all causes, likeliest first. */
    @JSExport
    public String[] causes() {
        return PageWords.texts(causes, cause -> cause.cause().key());
    }

    /** Their probabilities. */
    @JSExport
    public double[] probabilities() {
        return causes.stream().mapToDouble(CauseFinding::probability).toArray();
    }

    /** Standard errors of the probabilities from chance in the computing. */
    @JSExport
    public double[] errors() {
        return causes.stream().mapToDouble(CauseFinding::error).toArray();
    }

    /** Three severities a fault of one cause (by its place), SI of the fault: 5 %, half, 95 % lie below; none where it has none. */
    @JSExport
    public double[] severities(int cause) {
        return causes.get(cause).severity().stream()
                .flatMapToDouble(range -> DoubleStream.of(range.low(), range.middle(), range.high()))
                .toArray();
    }

    /** Readings worth taking next, best first, in plain words. */
    @JSExport
    public String[] nextReadings() {
        return PageWords.texts(finding.missing().readings(), NextReading::words);
    }

    /** What each is expected to tell of the action, nat. */
    @JSExport
    public double[] gains() {
        return finding.missing().readings().stream()
                .mapToDouble(NextReading::gain)
                .toArray();
    }
}
