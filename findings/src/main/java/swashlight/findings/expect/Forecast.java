package swashlight.findings.expect;

/**
 * What every reading would be on one drive, in the unit it is compared in: a workspace to be reused. A number that could not be computed
 * is marked as such and stands at 0; it is never NaN.
 */
public final class Forecast {
    private final double[] value;
    private final boolean[] solved;

    /** Room for so many readings. */
    public Forecast(int readings) {
        value = new double[readings];
        solved = new boolean[readings];
    }

    /** How many readings. */
    public int size() {
        return value.length;
    }

    /** Expected number of a reading, SI unit of its comparison (a speed for a time); 0 when not solved. */
    public double value(int reading) {
        return value[reading];
    }

    /** False when the drive found no settled state for this reading. */
    public boolean solved(int reading) {
        return solved[reading];
    }

    /** Notes a number, SI unit of its comparison; one that is not finite counts as not solved. */
    public void put(int reading, double number) {
        boolean finite = Math.abs(number) < 1e300;
        value[reading] = finite ? number : 0;
        solved[reading] = finite;
    }

    /** Notes that there is no settled state. */
    public void fail(int reading) {
        value[reading] = 0;
        solved[reading] = false;
    }
}
