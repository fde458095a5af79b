package swashlight.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** The reader of the books: quoting as in RFC 4180, complaints that name theme and line. */
final class CsvTableTest {

    private static final String HEADER = "id,quantity,inputs,printed,expected_si,tolerance,why,source,status,note\n";

    @Test
    void quotedFieldsKeepCommasAndQuotes() {
        CsvTable table = CsvTable.parse("t", "a,b\n\"x, \"\"y\"\"\",2\r\n# remark\n\n");
        assertThat(table.lines()).hasSize(1);
        assertThat(table.field(table.lines().get(0), "a")).isEqualTo("x, \"y\"");
        assertThat(table.field(table.lines().get(0), "b")).isEqualTo("2");
    }

    @Test
    void aRowIsReadInSi() {
        CheckRow row = CheckBook.parse(
                        "t", HEADER + "f/a,q,T=20 degC; p=3 bar,1.5 L/min,2.5e-05,0.1 L/min,why,who,seen,\n")
                .rows()
                .get(0);
        assertThat(row.family()).isEqualTo("f");
        assertThat(row.si("T")).isEqualTo(293.15);
        assertThat(row.si("p")).isEqualTo(3e5);
        assertThat(row.tolerance()).isCloseTo(1e-4 / 60, org.assertj.core.data.Offset.offset(1e-18));
        assertThat(row.status()).isEqualTo(Status.SEEN);
    }

    @Test
    void complaintsNameThemeAndLine() {
        assertThatThrownBy(() -> CheckBook.parse("t", HEADER + "f,q,,1 furlong,1,1,why,who,seen,\n"))
                .hasMessageContainingAll("t.csv, line 2", "furlong");
        assertThatThrownBy(() -> CheckBook.parse("t", HEADER + "f,q,,1,1,1,why,who,surely,\n"))
                .hasMessageContainingAll("t.csv, line 2", "surely", "closed-form");
        assertThatThrownBy(() -> CheckBook.parse("t", HEADER + "f,q,,1\n")).hasMessageContaining("line 2: 4 fields");
        assertThatThrownBy(() -> CheckBook.parse("t", HEADER + "\"f,q\n")).hasMessageContaining("line 2: a quote");
        assertThatThrownBy(() -> CheckBook.parse("t", HEADER + "f,q,,1,1,0,why,who,seen,\n"))
                .hasMessageContaining("tolerance");
        assertThatThrownBy(() -> CheckBook.read("weather")).hasMessageContaining("weather");
    }
}
