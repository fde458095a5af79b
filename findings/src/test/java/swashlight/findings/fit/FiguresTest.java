package swashlight.findings.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class FiguresTest {
    @ParameterizedTest
    @CsvSource({
        "0.8791,4,0.8791",
        "9.9996,4,10.00",
        "-0.000123456,3,-0.000123",
        "1234567,3,1230000",
        "1e-9,2,1.0E-9",
        "6.02214e23,4,6.022E23",
        "0,3,0"
    })
    void significant(double value, int figures, String text) {
        assertThat(Figures.significant(value, figures)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"2.345,1,2.3", "-0.04,1,0.0", "1999.96,1,2000.0", "7,0,7"})
    void fixed(double value, int decimals, String text) {
        assertThat(Figures.fixed(value, decimals)).isEqualTo(text);
    }

    /** Peer: the JDK's decimal arithmetic; seed 7. */
    @Test
    void readsBackAsThePeerRounds() {
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            double value = random.nextGaussian() * Math.pow(10, random.nextInt(30) - 15);
            int figures = 1 + random.nextInt(9);
            double peer = new BigDecimal(value).round(new MathContext(figures)).doubleValue();
            double ours = Double.parseDouble(Figures.significant(value, figures));
            assertThat(Math.abs(ours - peer)).isLessThanOrEqualTo(1e-12 * Math.abs(peer));
        }
    }
}
