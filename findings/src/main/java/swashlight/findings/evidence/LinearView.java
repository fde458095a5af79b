package swashlight.findings.evidence;

import java.util.Arrays;

/**
 * The readings as a linear function of the unknowns, at one severity, and what follows exactly from that:
 *
 * <pre>
 *   r = f + J z + e,   z ~ N(0, 1),   e ~ N(0, S) with none, one or two of the readings wild
 *   E = Σ_c π_c N(r; f, J Jᵀ + S_c)                  evidence, c which readings are wild
 *   z | r, c = z_0 + Jᵀ C_c⁻¹ (r − f − J z_0 − e_0)   with z_0, e_0 drawn from their priors
 * </pre>
 *
 * All in errors of the readings, 1. Wild readings are changes of rank one or two of C = J Jᵀ + S, so all pairs cost no more than the inverse
 * does. The offset f may be moved without new slopes. Source: linear Gaussian theory; conditioning of a prior draw after Matheron (from
 * memory). A workspace.
 */
final class LinearView {
    private static final double LOG_ROOT_TWO_PI = 0.9189385332046727;
    private static final double WILD_EXTRA = WildLaw.WIDTH * WildLaw.WIDTH - 1;
    private static final double LOG_TAME = Math.log(1 - WildLaw.SHARE);
    private static final double LOG_WILD = Math.log(WildLaw.SHARE / WildLaw.WIDTH);

    final int n;
    final int k;
    final double[] residual; // r − f
    final double[][] jacobian; // n × k
    final double[] variance; // of S, tame
    final boolean[] used;
    private final double[][] inverse; // of C
    private final double[] weighed; // C⁻¹ (r − f)
    private final double[] configuration; // π_c E_c over the best: none, ones, pairs
    private final double[] work;
    private final double[] pull;
    private double logDeterminant;
    private double logEvidence;
    private double total;

    LinearView(int n, int k) {
        this.n = n;
        this.k = k;
        residual = new double[n];
        jacobian = new double[n][k];
        variance = new double[n];
        used = new boolean[n];
        inverse = new double[n][n];
        weighed = new double[n];
        configuration = new double[1 + n + n * (n - 1) / 2];
        work = new double[n];
        pull = new double[n];
    }

    /** Computes everything from residual, jacobian, variance and used. */
    void prepare() {
        for (int i = 0; i < n; i++) {
            if (!used[i]) {
                Arrays.fill(jacobian[i], 0);
                residual[i] = 0;
            }
            for (int j = 0; j <= i; j++) {
                double sum = i == j ? variance[i] : 0;
                for (int l = 0; l < k; l++) {
                    sum += jacobian[i][l] * jacobian[j][l];
                }
                inverse[i][j] = sum;
                inverse[j][i] = sum;
            }
        }
        logDeterminant = SymmetricInverse.invert(inverse, n);
        for (int i = 0; i < n; i++) {
            logDeterminant -= used[i] ? 0 : Math.log(variance[i]);
        }
        offsetMoved();
    }

    /** Computes anew what a changed residual changes. */
    void offsetMoved() {
        double square = 0;
        for (int i = 0; i < n; i++) {
            double sum = 0;
            for (int j = 0; j < n; j++) {
                sum += inverse[i][j] * residual[j];
            }
            weighed[i] = sum;
            square += sum * residual[i];
        }
        evidences(-0.5 * (logDeterminant + square));
    }

    private void evidences(double logTame) {
        double wilder = Math.log(WildLaw.SHARE) - LOG_TAME;
        double highest = 0;
        int place = 1;
        int known = 0;
        configuration[0] = 0;
        for (int i = 0; i < n; i++) {
            configuration[place] = used[i] ? wilder + gain(i) : Double.NEGATIVE_INFINITY;
            highest = Math.max(highest, configuration[place++]);
            known += used[i] ? 1 : 0;
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                configuration[place] = used[i] && used[j] ? 2 * wilder + gain(i, j) : Double.NEGATIVE_INFINITY;
                highest = Math.max(highest, configuration[place++]);
            }
        }
        total = 0;
        for (int c = 0; c < configuration.length; c++) {
            configuration[c] = Math.exp(configuration[c] - highest);
            total += configuration[c];
        }
        logEvidence = logTame
                + highest
                + Math.log(total)
                + known * (LOG_TAME - LOG_ROOT_TWO_PI)
                + (n - known) * WildLaw.logUnsolved();
    }

    /** Change of ln N when reading i becomes wild. */
    private double gain(int i) {
        double d = WILD_EXTRA * variance[i];
        double stretch = 1 + d * inverse[i][i];
        return -0.5 * Math.log(stretch) + 0.5 * d * weighed[i] * weighed[i] / stretch;
    }

    /** Change of ln N when readings i and j become wild. */
    private double gain(int i, int j) {
        double di = 1 / (WILD_EXTRA * variance[i]) + inverse[i][i];
        double dj = 1 / (WILD_EXTRA * variance[j]) + inverse[j][j];
        double cross = inverse[i][j];
        double determinant = di * dj - cross * cross;
        double stretch = determinant * WILD_EXTRA * variance[i] * WILD_EXTRA * variance[j];
        double wi = weighed[i];
        double wj = weighed[j];
        return -0.5 * Math.log(stretch) + 0.5 * (dj * wi * wi - 2 * cross * wi * wj + di * wj * wj) / determinant;
    }

    /** ln E; readings times their errors, 1. */
    double logEvidence() {
        return logEvidence;
    }

    /** Most likely set of wild readings. */
    int likeliest() {
        int best = 0;
        for (int c = 1; c < configuration.length; c++) {
            best = configuration[c] > configuration[best] ? c : best;
        }
        return best;
    }

    /** The set of wild readings that a number in 0 … 1 picks by its share. */
    int picked(double uniform) {
        double wanted = uniform * total;
        int c = 0;
        while (c < configuration.length - 1 && wanted >= configuration[c]) {
            wanted -= configuration[c];
            c++;
        }
        return c;
    }

    /** First wild reading of a set, −1 for none. */
    int first(int set) {
        if (set <= n) {
            return set - 1;
        }
        int i = 1;
        int place = set - n - 1;
        while (place >= i) {
            place -= i;
            i++;
        }
        return i;
    }

    /** Second wild reading of a set, −1 for none. */
    int second(int set) {
        if (set <= n) {
            return -1;
        }
        int place = set - n - 1;
        for (int i = 1; place >= i; i++) {
            place -= i;
        }
        return place;
    }

    /** Moves z (a draw from the prior, or 0 with noise 0) to where the readings, with a set of them wild, want it. */
    void condition(int set, double[] z, double[] noise) {
        for (int i = 0; i < n; i++) {
            double sum = used[i] ? residual[i] - noise[i] : 0;
            for (int l = 0; l < k; l++) {
                sum -= jacobian[i][l] * z[l];
            }
            work[i] = sum;
        }
        for (int i = 0; i < n; i++) {
            double sum = 0;
            for (int j = 0; j < n; j++) {
                sum += inverse[i][j] * work[j];
            }
            pull[i] = sum;
        }
        loosen(set);
        for (int i = 0; i < n; i++) {
            for (int l = 0; l < k; l++) {
                z[l] += jacobian[i][l] * pull[i];
            }
        }
    }

    /** Woodbury: the pull C⁻¹ x becomes C_c⁻¹ x for the wild readings of a set. */
    private void loosen(int set) {
        int i = first(set);
        int j = second(set);
        if (i < 0) {
            return;
        }
        double di = 1 / (WILD_EXTRA * variance[i]) + inverse[i][i];
        double ai = pull[i] / di;
        double aj = 0;
        if (j >= 0) {
            double dj = 1 / (WILD_EXTRA * variance[j]) + inverse[j][j];
            double cross = inverse[i][j];
            double determinant = di * dj - cross * cross;
            double pi = pull[i];
            ai = (dj * pi - cross * pull[j]) / determinant;
            aj = (di * pull[j] - cross * pi) / determinant;
        }
        for (int l = 0; l < n; l++) {
            pull[l] -= inverse[l][i] * ai + (j < 0 ? 0 : inverse[l][j] * aj);
        }
    }

    /** J z for one reading, errors of the reading. */
    double along(int reading, double[] z) {
        double sum = 0;
        for (int l = 0; l < k; l++) {
            sum += jacobian[reading][l] * z[l];
        }
        return sum;
    }

    /** ln of the linear likelihood at z, summed over at most two wild readings; readings times their errors, 1. */
    double logLikelihood(double[] z) {
        double log = 0;
        double none = 1;
        double one = 0;
        double two = 0;
        for (int i = 0; i < n; i++) {
            if (!used[i]) {
                log += WildLaw.logUnsolved();
                continue;
            }
            double e = residual[i] - along(i, z);
            double square = e * e / variance[i];
            double tame = LOG_TAME - 0.5 * square;
            double wild = LOG_WILD - 0.5 * square / (WildLaw.WIDTH * WildLaw.WIDTH);
            double higher = Math.max(tame, wild);
            double a = Math.exp(tame - higher);
            double b = Math.exp(wild - higher);
            two = two * a + one * b;
            one = one * a + none * b;
            none = none * a;
            log += higher - LOG_ROOT_TWO_PI - 0.5 * Math.log(variance[i]);
        }
        double sum = none + one + two;
        return sum > 0 ? log + Math.log(sum) : Double.NEGATIVE_INFINITY;
    }
}
