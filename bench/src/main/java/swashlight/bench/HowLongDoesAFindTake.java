package swashlight.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import swashlight.files.machine.CaseFiles;
import swashlight.findings.choice.Choice;
import swashlight.findings.choice.Hill;
import swashlight.findings.choice.Ledger;
import swashlight.findings.cost.Prices;
import swashlight.findings.finding.Finder;
import swashlight.findings.finding.FinderOptions;
import swashlight.findings.finding.Finding;
import swashlight.findings.finding.Found;
import swashlight.findings.next.Prospect;
import swashlight.findings.next.Ranking;
import swashlight.findings.next.Tool;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.tie.Tie;
import swashlight.findings.tie.Ties;

/** Time of one full find on an invented case, with the suggestion of the next reading, on one core; the case is read beforehand. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class HowLongDoesAFindTake {
    /** Which demo case. */
    @Param({"rider-fades-uphill", "rider-too-little-known", "side-weak-forward", "loader-howls-cold", "loader-worn-pump"
    })
    String name = "";

    private MachineCase machine = CaseFiles.demo("rider-fades-uphill");

    /** Reads the case. */
    @Setup(Level.Trial)
    public void read() {
        machine = CaseFiles.demo(name);
    }

    /** One find as the desk does it. */
    @Benchmark
    public Finding asOnTheDesk() {
        return new Finder(FinderOptions.usual(1)).find(machine);
    }

    /** The whole answer: found, every kind of work costed, every reading ranked, ties told. */
    @Benchmark
    public List<Tie> wholeAnswer() {
        Found found = new Finder(FinderOptions.usual(1)).found(machine);
        Prices prices = Prices.invented();
        Ledger ledger = Ledger.of(found.belief(), prices, Hill.usual());
        Choice.of(found.belief(), ledger, prices, Hill.usual());
        Prospect prospect = Prospect.of(found.belief(), prices, 1);
        Ranking.of(prospect, ledger, prices, Tool.usual(), machine.readings());
        return new Ties(prospect, prices, Tool.usual(), machine.readings()).of(found.finding());
    }

    /** One quick find, as a study of thousands does it. */
    @Benchmark
    public Finding quick() {
        return new Finder(FinderOptions.quick(1)).find(machine);
    }
}
