package swashlight.drive.trace;

/**
 * One signal over some whole cycles.
 *
 * @param begin s
 * @param end s
 * @param mean over time, SI unit of the signal
 * @param rms root mean square around the mean, SI unit of the signal
 * @param least SI unit of the signal
 * @param greatest SI unit of the signal
 */
public record CycleMean(double begin, double end, double mean, double rms, double least, double greatest) {
    /** Ripple from trough to peak, SI unit of the signal. */
    public double ripple() {
        return greatest - least;
    }
}
