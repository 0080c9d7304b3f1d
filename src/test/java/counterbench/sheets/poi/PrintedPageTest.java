package counterbench.sheets.poi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterbench.sheets.report.ReportLayout.Paper;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * Sizes of paper are those of ANSI/ASME Y14.1 (letter is A, tabloid is B) and ISO 216, in inches,
 * from memory. So is that columns are measured in digits, which the usual font at ten points has
 * seven pixels wide, of 96 an inch (ECMA-376 part 1, 18.3.1.13).
 */
class PrintedPageTest {
    private static int[] columns(int count, int width) {
        int[] widths = new int[count];
        Arrays.fill(widths, width);
        return widths;
    }

    @Test
    void a_small_sheet_is_printed_at_its_size() {
        PrintedPage page = PrintedPage.of(Paper.LETTER, true, columns(5, 12));

        assertThat(page.across()).isEqualTo(1);
        assertThat(page.scale()).isEqualTo(1);
        // 8.5 inches less the margins are 7 inches of 72 points
        assertThat(page.height()).isCloseTo(504, within(1e-6));
    }

    @Test
    void a_sheet_is_made_smaller_as_long_as_it_can_be_read() {
        // 10.3 inches have 988.8 pixels; 16 columns of 13 digits have 1456
        PrintedPage page = PrintedPage.of(Paper.LETTER, true, columns(16, 13));

        assertThat(page.across()).isEqualTo(1);
        assertThat(page.scale()).isCloseTo(988.8 / 1456, within(1e-6));
    }

    @Test
    void a_sheet_that_would_be_too_small_is_spread_over_pages_side_by_side() {
        PrintedPage letter = PrintedPage.of(Paper.LETTER, true, columns(22, 14));
        PrintedPage tabloid = PrintedPage.of(Paper.TABLOID, true, columns(22, 14));
        PrintedPage upright = PrintedPage.of(Paper.A4, false, columns(22, 14));

        assertThat(letter.across()).isEqualTo(2);
        assertThat(letter.scale() * Styles.SIZE).isBetween(6.5, 10.0);
        assertThat(tabloid.across()).isEqualTo(1);
        assertThat(upright.across()).isEqualTo(3);
    }

    @Test
    void there_is_an_end_to_it() {
        assertThat(PrintedPage.of(Paper.A4, true, columns(200, 20)).across()).isEqualTo(4);
    }
}
