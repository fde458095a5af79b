package swashlight.desk.work;

import java.util.List;
import swashlight.desk.report.Fact;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Value;
import swashlight.drive.description.Dimension;
import swashlight.drive.fault.Fault;

/** Faults and their severities as values of a report. */
final class FaultWords {
    private FaultWords() {}

    /** "pump pistons and bores worn: added radial clearance 20 µm". */
    static Value of(SickDrive.Ailment ail) {
        return Value.word("fault.at", name(ail.fault()), meaning(ail.fault()), severity(ail.fault(), ail.severity()));
    }

    /** A line for each fault of a drive. */
    static List<Line> lines(SickDrive drive) {
        return drive.ails().stream()
                .<Line>map(ail -> new Fact("fault", of(ail)))
                .toList();
    }

    static Value name(Fault fault) {
        return Value.wordOr("fault." + fault.key(), fault.meaning());
    }

    static Value meaning(Fault fault) {
        return Value.wordOr("fault." + fault.key() + ".severity", fault.severityMeaning());
    }

    /** A severity (SI unit of the fault) in its measure. */
    static Value severity(Fault fault, double severity) {
        return Value.of(severity, measure(fault));
    }

    /** The measure of a fault's severity. */
    static Measure measure(Fault fault) {
        return fault.dimension() == Dimension.TEMPERATURE
                ? Measure.WARMTH
                : Measure.of(fault.dimension(), fault.usual());
    }
}
