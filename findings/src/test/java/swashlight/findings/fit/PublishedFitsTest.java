package swashlight.findings.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swashlight.checks.CheckBook;
import swashlight.checks.CheckRow;

/** Checks: certified regressions of the book {@code statistics}, from the far start. */
final class PublishedFitsTest {
    static Stream<CheckRow> rows() {
        return CheckBook.read("statistics").answered().stream()
                .filter(row -> row.family().equals("least-squares"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void agreesWithItsSource(CheckRow row) {
        row.assertAgrees(answer(row));
    }

    private static double answer(CheckRow row) {
        if (!row.family().equals("least-squares")) {
            throw new IllegalArgumentException("no law for check " + row.id());
        }
        NistProblem problem = NistProblem.ALL.stream()
                .filter(p -> p.name().equals(row.text("data")))
                .findFirst()
                .orElseThrow();
        FitOutcome outcome =
                LevenbergMarquardt.solve(problem, problem.starts()[0], Bounds.none(problem.certified().length));
        assertThat(outcome.converged()).as(outcome.line()).isTrue();
        String asked = row.id().substring(row.id().lastIndexOf('-') + 1);
        if (asked.equals("rss")) {
            return outcome.objective();
        }
        int number = asked.charAt(asked.length() - 1) - '1';
        return asked.startsWith("sd") ? deviation(problem, outcome, number) : outcome.point()[number];
    }

    /** Root of the diagonal of s² (JᵀJ)⁻¹, by a library's matrix inverse. */
    private static double deviation(NistProblem problem, FitOutcome outcome, int number) {
        double[][] jacobian = new double[problem.residualCount()][outcome.point().length];
        problem.jacobian(outcome.point(), jacobian);
        RealMatrix slopes = new Array2DRowRealMatrix(jacobian);
        RealMatrix inverse = new LUDecomposition(slopes.transpose().multiply(slopes))
                .getSolver()
                .getInverse();
        double variance = outcome.objective() / (problem.residualCount() - outcome.point().length);
        return Math.sqrt(variance * inverse.getEntry(number, number));
    }
}
