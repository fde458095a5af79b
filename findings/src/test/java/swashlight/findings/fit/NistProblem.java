package swashlight.findings.fit;

import java.util.List;

/**
 * Nonlinear regressions with certified answers: data, law, two starts, parameters and residual sum.
 * Source: NIST Statistical Reference Datasets, nonlinear regression (reference book 10.1, 10.2, D9).
 */
record NistProblem(String name, double[] x, double[] y, double[][] starts, double[] certified, double squares, Law law)
        implements LeastSquares {
    interface Law {
        double at(double x, double[] b);
    }

    static final List<NistProblem> ALL = List.of(
            new NistProblem(
                    "Misra1a",
                    new double[] {
                        77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0
                    },
                    new double[] {
                        10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78
                    },
                    new double[][] {{500, 0.0001}, {250, 0.0005}},
                    new double[] {2.3894212918E+02, 5.5015643181E-04},
                    1.2455138894E-01,
                    (x, b) -> b[0] * (1 - Math.exp(-b[1] * x))),
            new NistProblem(
                    "MGH09",
                    new double[] {4, 2, 1, 0.5, 0.25, 0.167, 0.125, 0.1, 0.0833, 0.0714, 0.0625},
                    new double[] {0.1957, 0.1947, 0.1735, 0.1600, 0.0844, 0.0627, 0.0456, 0.0342, 0.0323, 0.0235, 0.0246
                    },
                    new double[][] {{25, 39, 41.5, 39}, {0.25, 0.39, 0.415, 0.39}},
                    new double[] {1.9280693458E-01, 1.9128232873E-01, 1.2305650693E-01, 1.3606233068E-01},
                    3.0750560385E-04,
                    (x, b) -> b[0] * (x * x + b[1] * x) / (x * x + b[2] * x + b[3])),
            new NistProblem(
                    "BoxBOD",
                    new double[] {1, 2, 3, 5, 7, 10},
                    new double[] {109, 149, 149, 191, 213, 224},
                    new double[][] {{1, 1}, {100, 0.75}},
                    new double[] {2.1380940889E+02, 5.4723748542E-01},
                    1.1680088766E+03,
                    (x, b) -> b[0] * (1 - Math.exp(-b[1] * x))),
            new NistProblem(
                    "Rat42",
                    new double[] {9, 14, 21, 28, 42, 57, 63, 70, 79},
                    new double[] {8.93, 10.80, 18.59, 22.33, 39.35, 56.11, 61.73, 64.62, 67.08},
                    new double[][] {{100, 1, 0.1}, {75, 2.5, 0.07}},
                    new double[] {7.2462237576E+01, 2.6180768402E+00, 6.7359200066E-02},
                    8.0565229338E+00,
                    (x, b) -> b[0] / (1 + Math.exp(b[1] - b[2] * x))),
            new NistProblem(
                    "Rat43",
                    new double[] {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15},
                    new double[] {
                        16.08, 33.83, 65.80, 97.20, 191.55, 326.20, 386.87, 520.53, 590.03, 651.92, 724.93, 699.56,
                        689.96, 637.56, 717.41
                    },
                    new double[][] {{100, 10, 1, 1}, {700, 5, 0.75, 1.3}},
                    new double[] {6.9964151270E+02, 5.2771253025E+00, 7.5962938329E-01, 1.2792483859E+00},
                    8.7864049080E+03,
                    (x, b) -> b[0] / Math.pow(1 + Math.exp(b[1] - b[2] * x), 1 / b[3])));

    @Override
    public int residualCount() {
        return x.length;
    }

    @Override
    public void residuals(double[] point, double[] residuals) {
        for (int i = 0; i < x.length; i++) {
            residuals[i] = law.at(x[i], point) - y[i];
        }
    }
}
