package swashlight.browser;

import java.util.Random;
import java.util.stream.DoubleStream;

/** Numbers to try functions on: edges against edges, then by lot over every size and over the sizes physics meets. */
final class Grid {
    static final long SEED = 70;
    private static final int BY_LOT = 20_000;

    private static final double[] EDGES = DoubleStream.of(
                    0,
                    Double.MIN_VALUE,
                    1e-320,
                    Double.MIN_NORMAL,
                    1e-300,
                    1e-160,
                    1e-20,
                    1e-10,
                    1e-9,
                    1e-5,
                    0.1,
                    1.0 / 3,
                    0.5,
                    Math.nextDown(0.5),
                    Math.PI / 4,
                    Math.nextDown(1.0),
                    1,
                    Math.nextUp(1.0),
                    1.5,
                    Math.PI / 2,
                    2,
                    2.5,
                    Math.E,
                    3,
                    Math.PI,
                    2 * Math.PI,
                    10,
                    100,
                    709.78,
                    709.79,
                    745.1,
                    745.2,
                    1000,
                    1e5,
                    2147483647.0,
                    2147483648.0,
                    4503599627370497.5,
                    9007199254740993.0,
                    9.223372036854775e18,
                    1e19,
                    1e22,
                    1e100,
                    1e200,
                    1e300,
                    Double.MAX_VALUE,
                    Double.POSITIVE_INFINITY)
            .flatMap(x -> DoubleStream.of(x, -x))
            .toArray();

    final double[] a;
    final double[] b;

    private Grid(double[] a, double[] b) {
        this.a = a;
        this.b = b;
    }

    static Grid fixed() {
        int edges = EDGES.length + 1;
        double[] a = new double[edges * edges + 2 * BY_LOT];
        double[] b = new double[a.length];
        int at = 0;
        for (int i = 0; i < edges; i++) {
            for (int j = 0; j < edges; j++) {
                a[at] = i < EDGES.length ? EDGES[i] : Double.NaN;
                b[at++] = j < EDGES.length ? EDGES[j] : Double.NaN;
            }
        }
        Random lot = new Random(SEED);
        for (int i = 0; i < BY_LOT; i++) {
            a[at] = Double.longBitsToDouble(lot.nextLong()); // any number there is
            b[at++] = Double.longBitsToDouble(lot.nextLong());
            a[at] = Math.exp(40 * lot.nextDouble() - 20) * (lot.nextBoolean() ? 1 : -1);
            b[at++] = 10 * lot.nextDouble() - 5;
        }
        return new Grid(a, b);
    }
}
