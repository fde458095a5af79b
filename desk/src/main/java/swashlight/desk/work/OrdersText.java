package swashlight.desk.work;

import swashlight.drive.trace.OrderSpectrum;
import swashlight.drive.trace.Signal;

/** Orders as CSV for other programs: amplitudes in SI at every line, the mean of each signal at order 0. */
final class OrdersText {
    private OrdersText() {}

    static String of(OrderSpectrum spectrum) {
        StringBuilder text = new StringBuilder("order_ratio,frequency_hz");
        double[][] amplitudes = new double[spectrum.signals().size()][];
        for (int i = 0; i < amplitudes.length; i++) {
            Signal signal = spectrum.signals().get(i);
            text.append(',').append(signal.key()).append("_amplitude_").append(TraceText.unit(signal.dimension()));
            amplitudes[i] = spectrum.amplitudes(i);
        }
        text.append("\r\n");
        for (int line = 0; line < amplitudes[0].length; line++) {
            double order = line * spectrum.step();
            text.append(order).append(',').append(order * spectrum.speed() / (2 * Math.PI));
            for (double[] of : amplitudes) {
                text.append(',').append(of[line]);
            }
            text.append("\r\n");
        }
        return text.toString();
    }
}
