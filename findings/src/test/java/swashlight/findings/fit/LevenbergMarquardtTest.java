package swashlight.findings.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

final class LevenbergMarquardtTest {
    static Stream<Arguments> near() {
        return certified().filter(row -> row.get()[2].equals(1));
    }

    static Stream<Arguments> certified() {
        return NistProblem.ALL.stream()
                .flatMap(p -> Stream.of(Arguments.of(p.name(), p, 0), Arguments.of(p.name(), p, 1)));
    }

    /** Certified to 11 digits; 8 are asked, what central differences leave (residual sums: 9). */
    @ParameterizedTest(name = "{0} start {2}")
    @MethodSource("certified")
    void meetsTheCertifiedAnswer(String name, NistProblem problem, int start) {
        FitOutcome outcome =
                LevenbergMarquardt.solve(problem, problem.starts()[start], Bounds.none(problem.certified().length));
        assertThat(outcome.converged()).as(name + ": " + outcome.line()).isTrue();
        assertThat(outcome.objective()).isCloseTo(problem.squares(), within(problem.squares() * 1e-9));
        for (int j = 0; j < problem.certified().length; j++) {
            double sure = problem.certified()[j];
            assertThat(outcome.point()[j]).as("b" + (j + 1)).isCloseTo(sure, within(Math.abs(sure) * 1e-7));
        }
    }

    /** The same residuals through a well-kept general solver, from the near starts; it stops at about five digits. */
    @ParameterizedTest(name = "{0} start {2}")
    @MethodSource("near")
    void agreesWithHipparchus(String name, NistProblem problem, int start) {
        double[] zero = new double[problem.residualCount()];
        var optimum = new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder()
                        .start(problem.starts()[start])
                        .target(zero)
                        .maxEvaluations(10_000)
                        .maxIterations(10_000)
                        .model(p -> {
                            double[] residuals = new double[problem.residualCount()];
                            double[][] jacobian = new double[residuals.length][p.getDimension()];
                            problem.residuals(p.toArray(), residuals);
                            problem.jacobian(p.toArray(), jacobian);
                            return new Pair<>(new ArrayRealVector(residuals), new Array2DRowRealMatrix(jacobian));
                        })
                        .build());
        FitOutcome ours =
                LevenbergMarquardt.solve(problem, problem.starts()[start], Bounds.none(problem.certified().length));
        for (int j = 0; j < problem.certified().length; j++) {
            double theirs = optimum.getPoint().getEntry(j);
            assertThat(ours.point()[j]).as(name).isCloseTo(theirs, within(Math.abs(theirs) * 3e-5));
        }
    }

    @Test
    void aLimitHoldsAndTheRestFits() {
        NistProblem box = NistProblem.ALL.get(2);
        Bounds bounds = new Bounds(new double[] {0, 0}, new double[] {1000, 0.4});
        FitOutcome outcome = LevenbergMarquardt.solve(box, new double[] {100, 0.3}, bounds);
        assertThat(outcome.converged()).as(outcome.line()).isTrue();
        assertThat(outcome.point()[1]).isEqualTo(0.4);
        // With b2 fixed the law is linear in b1, whose best value has a closed form.
        double top = 0;
        double bottom = 0;
        for (int i = 0; i < box.x().length; i++) {
            double shape = 1 - Math.exp(-0.4 * box.x()[i]);
            top += shape * box.y()[i];
            bottom += shape * shape;
        }
        assertThat(outcome.point()[0]).isCloseTo(top / bottom, within(1e-5));
    }

    @Test
    void aLawWithoutAValueIsAnAnswerAndNoNumber() {
        LeastSquares nowhere = new LeastSquares() {
            @Override
            public int residualCount() {
                return 2;
            }

            @Override
            public void residuals(double[] point, double[] residuals) {
                residuals[0] = Math.sqrt(-1 - point[0] * point[0]);
                residuals[1] = 1;
            }
        };
        FitOutcome outcome = LevenbergMarquardt.solve(nowhere, new double[] {1}, Bounds.none(1));
        assertThat(outcome).isInstanceOf(FitOutcome.NotConverged.class);
        assertThat(outcome.point()).containsExactly(1);
        assertThat(outcome.line()).contains("start elsewhere").doesNotContain("NaN");
    }

    @Test
    void aKinkIsReportedAsNotConverged() {
        // sqrt|x| has no slope to follow at its minimum: no right angle is ever reached.
        LeastSquares kink = new LeastSquares() {
            @Override
            public int residualCount() {
                return 1;
            }

            @Override
            public void residuals(double[] point, double[] residuals) {
                residuals[0] = 1 + Math.sqrt(Math.abs(point[0] - 0.3));
            }
        };
        FitOutcome outcome = LevenbergMarquardt.solve(kink, new double[] {2}, Bounds.none(1));
        assertThat(outcome.converged()).isFalse();
        assertThat(outcome.objective()).isGreaterThanOrEqualTo(1);
    }

    private static org.assertj.core.data.Offset<Double> within(double difference) {
        return org.assertj.core.data.Offset.offset(difference);
    }
}
