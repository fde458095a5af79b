package swashlight.desk.report;

import java.util.List;

/** A picture as data; numbers SI of their measures. */
public sealed interface Figure {
    /** What it shows. */
    Value title();

    /** Lines over a common axis. */
    record Curves(Value title, Axis across, Axis up, List<Curve> curves) implements Figure {
        public Curves {
            curves = List.copyOf(curves);
        }
    }

    /** Horizontal bars, each from a low to a high value; intervals need no zero on their axis. */
    record Bars(Value title, Axis across, List<Bar> bars, boolean intervals) implements Figure {
        public Bars {
            bars = List.copyOf(bars);
        }

        /** Bars around zero. */
        public Bars(Value title, Axis across, List<Bar> bars) {
            this(title, across, bars, false);
        }
    }

    /** A field of values over two axes: one row a value of {@code up}, NaN where there is none. */
    record Field(Value title, Axis across, Axis up, Axis shade, double[] xs, double[] ys, double[][] values)
            implements Figure {
        public Field {
            xs = xs.clone();
            ys = ys.clone();
            values = values.clone();
        }

        @Override
        public double[] xs() {
            return xs.clone();
        }

        @Override
        public double[] ys() {
            return ys.clone();
        }

        @Override
        public double[][] values() {
            return values.clone();
        }
    }
}
