package counterbench.sheets.poi;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks against the serials that ECMA-376 part 1, 18.17.4, and vendors' help pages print. */
class SerialDatesTest {
    @ParameterizedTest
    @CsvSource({
        "61, 1900-03-01",
        "3687, 1910-02-03",
        "25569, 1970-01-01",
        "36526, 2000-01-01",
        "38749, 2006-02-01",
        "39448, 2008-01-01",
        "45351, 2024-02-29",
        "2958465, 9999-12-31"
    })
    void serials_of_the_1900_system_are_these_days(String serial, String day) {
        assertThat(SerialDates.text(new BigDecimal(serial), false, false)).contains(day);
    }

    @ParameterizedTest
    @CsvSource({"0, 1904-01-01", "2225, 1910-02-03", "37287, 2006-02-01", "2957003, 9999-12-31"})
    void serials_of_the_1904_system_are_these_days(String serial, String day) {
        assertThat(SerialDates.text(new BigDecimal(serial), true, false)).contains(day);
    }

    @ParameterizedTest
    @CsvSource({"59", "60", "60.99", "0", "-1", "0.5", "2958466", "1E99", "1E-99"})
    void serials_of_no_certain_day_are_none(String serial) {
        assertThat(SerialDates.text(new BigDecimal(serial), false, true)).isEmpty();
    }

    @Test
    void the_fraction_is_the_time_of_day_to_the_millisecond() {
        // 2026-03-05 14:20 as a double: 46086 + 860/1440
        assertThat(SerialDates.text(new BigDecimal("46086.597222222219"), false, true))
                .contains("2026-03-05T14:20:00");
        assertThat(SerialDates.text(new BigDecimal("46086.99999999999"), false, false))
                .contains("2026-03-06");
        assertThat(SerialDates.text(new BigDecimal("46086.5"), false, false))
                .contains("2026-03-05T12:00:00");
        assertThat(SerialDates.text(new BigDecimal("46086.00000579"), false, true))
                .contains("2026-03-05T00:00:00.500");
    }
}
