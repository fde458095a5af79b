package swashlight.bench;

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
import swashlight.findings.finding.Finder;
import swashlight.findings.finding.FinderOptions;
import swashlight.findings.finding.Finding;
import swashlight.findings.reading.MachineCase;

/** Time of one full find on an invented case, with the suggestion of the next reading, on one core; the case is read beforehand. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class HowLongDoesAFindTake {
    /** Which demo case. */
    @Param({"rider-fades-uphill", "side-weak-forward", "loader-howls-cold"})
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

    /** One quick find, as a study of thousands does it. */
    @Benchmark
    public Finding quick() {
        return new Finder(FinderOptions.quick(1)).find(machine);
    }
}
