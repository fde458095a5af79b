package swashlight.browser;

import java.util.List;
import java.util.stream.DoubleStream;
import org.teavm.jso.JSExport;
import swashlight.findings.finding.CauseFinding;
import swashlight.findings.finding.Finding;
import swashlight.findings.finding.Verdict;
import swashlight.findings.next.ReadingWorth;
import swashlight.findings.tie.Tie;

/** What a case comes to. */
public final class PageFinding {
    private final Finding finding;
    private final List<CauseFinding> causes;
    private final List<ReadingWorth> readings;
    private final List<Tie> ties;

    PageFinding(Finding finding, List<ReadingWorth> readings, List<Tie> ties) {
        this.finding = finding;
        this.readings = List.copyOf(readings);
        this.ties = List.copyOf(ties);
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
        return PageWords.texts(readings, worth -> worth.errand().reading().words());
    }

    /** What each is expected to tell of the action, nat. */
    @JSExport
    public double[] gains() {
        return readings.stream().mapToDouble(ReadingWorth::gain).toArray();
    }

    /** What each is expected to save, less what its time costs, in the currency of the prices. */
    @JSExport
    public double[] pays() {
        return readings.stream().mapToDouble(ReadingWorth::net).toArray();
    }

    /** How many groups of causes cannot be told apart yet, likeliest first. */
    @JSExport
    public int ties() {
        return ties.size();
    }

    /** Keys of the causes of a group. */
    @JSExport
    public String[] tied(int tie) {
        return PageWords.texts(ties.get(tie).causes(), cause -> cause.cause().key());
    }

    /** Whether they call for different work. */
    @JSExport
    public boolean tieMatters(int tie) {
        return ties.get(tie).matters();
    }

    /** The cheapest reading that would tell, in plain words; empty where none is needed or none would. */
    @JSExport
    public String separator(int tie) {
        return ties.get(tie)
                .separator()
                .map(reading -> reading.errand().reading().words())
                .orElse("");
    }
}
