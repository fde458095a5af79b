package swashlight.desk.report;

/**
 * One line of a figure; a gap where a value is NaN.
 *
 * @param name for the legend
 * @param hue which colour, 0 first
 * @param stroke which line pattern, 0 first: solid
 * @param xs along the common axis, SI
 * @param ys SI
 */
public record Curve(Value name, int hue, int stroke, double[] xs, double[] ys) {
    public Curve {
        xs = xs.clone();
        ys = ys.clone();
    }

    @Override
    public double[] xs() {
        return xs.clone();
    }

    @Override
    public double[] ys() {
        return ys.clone();
    }
}
