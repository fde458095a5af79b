package swashlight.files.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import swashlight.files.document.InputFault;
import swashlight.findings.cause.Tally;
import swashlight.findings.reading.Look;

final class TallyFileTest {
    @Test
    void readsCasesAndLooks() {
        String text = "# invented\ncause,look,seen,not_seen\nbelt-worn,,31,\nbelt-worn,beltGlazed,20,5\n";
        assertThat(TallyFile.read("counted.csv", new StringReader(text)))
                .isEqualTo(List.of(
                        new Tally("belt-worn", Optional.empty(), 31, 0),
                        new Tally("belt-worn", Optional.of(Look.BELT_GLAZED), 20, 5)));
    }

    @Test
    void saysWhereAndWhatWouldBeRight() {
        String text = "cause,look,seen,not_seen\nbelt-wurn,,3,\nbelt-worn,beltGlased,-1,2\n";
        assertThatThrownBy(() -> TallyFile.read("counted.csv", new StringReader(text)))
                .isInstanceOfSatisfying(InputFault.class, fault -> {
                    assertThat(fault.complaints()).hasSize(3);
                    assertThat(fault.complaints().get(0).line()).isEqualTo(2);
                    assertThat(fault.complaints().get(0).right()).contains("belt-worn");
                    assertThat(fault.complaints().get(1).right()).contains("beltGlazed");
                });
    }
}
