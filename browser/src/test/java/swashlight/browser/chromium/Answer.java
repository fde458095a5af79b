package swashlight.browser.chromium;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What a script handed back: numbers bit for bit, or text. */
public record Answer(byte[] bytes) {
    /** As numbers. */
    public double[] numbers() {
        double[] numbers = new double[bytes.length / Double.BYTES];
        ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).asDoubleBuffer().get(numbers);
        return numbers;
    }

    /** As text. */
    public String text() {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** As lines of text. */
    public List<String> lines() {
        return text().lines().toList();
    }
}
