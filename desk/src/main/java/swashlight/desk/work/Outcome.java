package swashlight.desk.work;

import java.util.List;
import swashlight.desk.report.Figure;
import swashlight.desk.report.Report;

/** How a question ended. A fault of our own is none of these: it is thrown. */
public sealed interface Outcome {
    /** An answer, "cannot tell" included, with the picture of it where there is one. */
    record Answered(Report report, List<Figure> figures) implements Outcome {
        public Answered {
            figures = List.copyOf(figures);
        }

        /** An answer without a picture. */
        public Answered(Report report) {
            this(report, List.of());
        }
    }

    /** A file's text, to be told as it is. */
    record Printed(String text) implements Outcome {}

    /** The solver found no settled state: the best it reached, how far off that is, and what to try. */
    record NotConverged(Report report) implements Outcome {}

    /** Whoever waited had enough of it: nothing was answered and nothing written. */
    record Stopped() implements Outcome {}

    /** The input cannot be worked with: everything wrong with it. */
    record Refused(List<Refusal> refusals) implements Outcome {
        public Refused {
            refusals = List.copyOf(refusals);
        }
    }
}
