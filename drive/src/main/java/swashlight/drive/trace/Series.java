package swashlight.drive.trace;

import java.util.Arrays;

/** Numbers that grow in count. */
final class Series {
    private double[] values = new double[64];
    private int size;

    void add(double value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, 2 * size);
        }
        values[size++] = value;
    }

    int size() {
        return size;
    }

    double at(int index) {
        return values[index];
    }

    double[] toArray() {
        return Arrays.copyOf(values, size);
    }
}
