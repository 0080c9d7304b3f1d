package counterbench.labels.gs1;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class Gs1DateTest {
    /** GS1 General Specifications (Release 18), section 3.4.7 and its examples. */
    @ParameterizedTest
    @CsvSource({"130200,2013-02-28", "160200,2016-02-29", "261200,2026-12-31"})
    void the_day_00_is_the_last_of_its_month(String text, LocalDate day) {
        assertThat(Gs1Date.of(text, 2018)).contains(day);
    }

    /** The rule of GS1 General Specifications, section 7.12; the values computed from it. */
    @ParameterizedTest
    @CsvSource({
        "2026,76,2076", "2026,77,1977", "2026,00,2000", "2026,26,2026", "2050,00,2100",
        "2051,01,2101", "2051,02,2002", "1999,49,2049", "1999,50,1950", "2000,50,2050",
        "2000,51,1951"
    })
    void the_century_reaches_49_years_back_and_50_ahead(int read, String year, int meant) {
        assertThat(Gs1Date.of(year + "0701", read)).contains(LocalDate.of(meant, 7, 1));
    }

    /** The tests of GS1's Barcode Syntax Dictionary. */
    @ParameterizedTest
    @ValueSource(strings = {"000606", "250606", "990606", "200131", "200229", "240229", "000229"})
    void published_days_are_days(String text) {
        assertThat(Gs1Date.isOne(text, false)).isTrue();
        assertThat(Element.faultOf("17", text)).isEmpty();
    }

    /** The tests of GS1's Barcode Syntax Dictionary. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "201310", "200132", "200230", "200431", "210229", "220229", "20012", "2001311",
                "2001a1", ""
            })
    void published_faults_are_faults(String text) {
        assertThat(Gs1Date.isOne(text, true)).isFalse();
        assertThat(Element.faultOf("17", text)).isPresent();
    }

    /** The tests of GS1's Barcode Syntax Dictionary: yymmd0 takes 00, yymmdd does not. */
    @Test
    void the_day_00_is_for_those_identifiers_only_that_take_it() {
        assertThat(Element.faultOf("17", "200100")).isEmpty();
        assertThat(Element.faultOf("7003", "2001001200")).isPresent();
        assertThat(Element.faultOf("7011", "200100")).isPresent();
        assertThat(Element.faultOf("7011", "200131")).isEmpty();
        assertThat(Element.faultOf("7011", "2001312359")).isEmpty();
        assertThat(Element.faultOf("7011", "2001312400")).isPresent();
    }

    @Test
    void a_leap_day_of_a_century_that_has_none_is_no_day() {
        assertThat(Gs1Date.of("000229", 2026)).contains(LocalDate.of(2000, 2, 29));
        assertThat(Gs1Date.of("000229", 2060)).isEmpty();
        assertThat(Gs1Date.of("000200", 2060)).contains(LocalDate.of(2100, 2, 28));
    }

    @Test
    void a_day_is_written_as_it_is_read() {
        LocalDate day = LocalDate.of(2026, 3, 9);
        assertThat(Gs1Date.written(day)).isEqualTo("260309");
        assertThat(Gs1Date.of(Gs1Date.written(day), 2026)).contains(day);
    }
}
