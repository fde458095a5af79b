package swashlight.desk.work;

import swashlight.desk.report.Value;
import swashlight.drive.description.Parameter;

/** Parameters of a drive as values of a report. */
final class ParameterWords {
    private ParameterWords() {}

    /** What it is: the catalogue's words, else the parameter's own. */
    static Value meaning(Parameter parameter) {
        return Value.wordOr("parameter." + parameter.key(), parameter.meaning());
    }

    /** What it is, with the part it belongs to: "pump: radial clearance of pistons in their bores". */
    static Value name(Parameter parameter) {
        return Value.word("parameter.name", Value.word("section." + parameter.section()), meaning(parameter));
    }
}
