package counterbench.sheets.poi;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.sheets.report.CellFormat;
import counterbench.sheets.report.ColumnLayout;
import counterbench.sheets.report.SheetLayout;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WidthsTest {
    /** 22 characters take 20 digits and the margins. */
    @ParameterizedTest
    @CsvSource({
        "'', 1",
        "12345678901234567890, 1",
        "123456789012345678901, 2",
        "1234567890 1234567890, 2",
        "12345678901 123456789 12345678901, 3",
        "1234567890123456789012345678901234567890, 2",
        "12 1234567890123456789012, 3",
        "ABCDEFGHIJKLMNOP, 1",
        "ABCDEFGHIJKLMNOPQ, 2",
        "二三四五六七八九十, 1",
        "一二三四五六七八九十一, 2",
    })
    void lines_are_broken_between_words_and_within_those_that_are_too_long(String text, int lines) {
        assertThat(Widths.lines(text, 22)).isEqualTo(lines);
    }

    /** A bold letter is about a tenth wider than a digit, a filter's button takes four digits. */
    @ParameterizedTest
    @CsvSource({"Removed by, 12", "Plugs required, 13", "Job, 7", "Minutes, 12"})
    void a_heading_has_room_for_its_longest_word_beside_the_button(String heading, int least) {
        ColumnLayout column = new ColumnLayout("field", heading, 0, CellFormat.TEXT, false, "");
        SheetLayout sheet =
                new SheetLayout("Cores", "Cores", "", List.of(column), Set.of("field"), null);
        assertThat(new Widths(sheet).of(0)).isGreaterThanOrEqualTo(least);
    }

    @Test
    void a_text_of_several_lines_takes_them_all() {
        assertThat(Widths.lines("one\ntwo\n\nfour", 25)).isEqualTo(4);
    }
}
