package counterbench.shell.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PrinterTest {
    private static final List<Column> COLUMNS =
            List.of(Column.text("kit"), Column.number("unit_cost"), Column.text("reason"));

    private static String printed(Format format, int width, boolean screen, Consumer<Rows> work) {
        return printed(format, width, screen, COLUMNS, work);
    }

    private static String printed(
            Format format, int width, boolean screen, List<Column> columns, Consumer<Rows> work) {
        StringWriter text = new StringWriter();
        PrintWriter out = new PrintWriter(text);
        try (Rows rows = new Printer(out, screen, width, () -> {}).rows(format, columns)) {
            work.accept(rows);
        }
        return text.toString();
    }

    private static String table(int width, Consumer<Rows> work) {
        return printed(Format.TABLE, width, true, work);
    }

    private static void two(Rows rows) {
        rows.add("K-1", new BigDecimal("12.50"), "dropped by the technician on the bench");
        rows.add("K-2207", null, "");
    }

    @Test
    void a_paragraph_breaks_between_words_and_stays_indented() {
        assertThat(Paragraph.lines("  wear goggles and gloves", 16))
                .containsExactly("  wear goggles", "  and gloves");
        assertThat(Paragraph.lines("short", 16)).containsExactly("short");
    }

    @Test
    void a_table_puts_numbers_at_the_right_and_no_blanks_at_line_ends() {
        assertThat(table(80, PrinterTest::two))
                .isEqualToNormalizingNewlines(
                        """
                        kit     unit cost  reason
                        ------  ---------  --------------------------------------
                        K-1         12.50  dropped by the technician on the bench
                        K-2207
                        """);
    }

    @Test
    void a_name_is_whole_also_where_it_is_longer_than_those_of_the_first_rows() {
        List<Column> columns =
                List.of(Column.text("fact").withRoomFor(6), Column.text("said of it"));
        String text =
                printed(
                        Format.TABLE,
                        44,
                        true,
                        columns,
                        rows -> {
                            for (int line = 1; line <= 1_000; line++) {
                                rows.add("1." + line, "the same words over and over again");
                            }
                        });
        assertThat(text.lines())
                .contains("1.999   the same words over and over again")
                .contains("1.1000  the same words over and over again");
    }

    @Test
    void a_column_with_room_for_so_much_is_not_wrapped_while_another_one_can_be() {
        List<Column> columns =
                List.of(Column.text("recorded_at").withRoomFor(25), Column.text("source"));
        String text =
                printed(
                        Format.TABLE,
                        42,
                        true,
                        columns,
                        rows -> rows.add("2026-11-27T01:06:43-06:00", "scrap N-168 HB-5123 1"));
        assertThat(text.lines())
                .contains("2026-11-27T01:06:43-06:00  scrap N-168")
                .contains("                           HB-5123 1");
    }

    @Test
    void words_are_wrapped_to_fit_the_terminal() {
        assertThat(table(40, PrinterTest::two))
                .isEqualToNormalizingNewlines(
                        """
                        kit     unit cost  reason
                        ------  ---------  ---------------------
                        K-1         12.50  dropped by the
                                           technician on the
                                           bench
                        K-2207
                        """);
    }

    @Test
    void on_a_very_narrow_terminal_cells_stand_below_each_other() {
        assertThat(table(30, PrinterTest::two))
                .isEqualToNormalizingNewlines(
                        """
                        kit        K-1
                        unit cost  12.50
                        reason     dropped by the
                                   technician on the
                                   bench

                        kit        K-2207
                        """);
    }

    @Test
    void wide_and_combining_characters_are_measured_as_they_are_shown() {
        assertThat(
                        table(
                                80,
                                rows -> {
                                    rows.add("ポンプ", 1, "x");
                                    rows.add("e\u0301", 2, "y");
                                    rows.add("Öl", 3, "z");
                                }))
                .isEqualToNormalizingNewlines(
                        """
                        kit     unit cost  reason
                        ------  ---------  ------
                        ポンプ          1  x
                        e\u0301               2  y
                        Öl              3  z
                        """);
    }

    @Test
    void hidden_characters_are_shown_and_line_ends_become_blanks() {
        assertThat(table(80, rows -> rows.add("K\u001b[2J", 1, "a\nb\u202e")))
                .contains("K\\u001b[2J", "a b\\u202e")
                .doesNotContain("\u001b");
    }

    @Test
    void no_rows_are_said_to_be_none() {
        assertThat(table(80, rows -> {})).isEqualToNormalizingNewlines("none\n");
    }

    @Test
    void a_table_may_have_sections_which_programs_do_not_see() {
        Consumer<Rows> work =
                rows -> {
                    rows.section("Costs", "kit", "unit_cost");
                    rows.add("K-1", 1, null);
                    rows.section("Reasons", "kit", "reason");
                    rows.add("K-2", null, "lost");
                };
        assertThat(table(80, work))
                .isEqualToNormalizingNewlines(
                        """
                        Costs

                        kit  unit cost
                        ---  ---------
                        K-1          1

                        Reasons

                        kit  reason
                        ---  ------
                        K-2  lost
                        """);
        assertThat(printed(Format.CSV, 80, false, work))
                .isEqualTo("kit,unit_cost,reason\r\nK-1,1,\r\nK-2,,lost\r\n");
    }

    @Test
    void json_is_one_object_with_texts_and_nulls() {
        assertThat(
                        printed(
                                Format.JSON,
                                80,
                                false,
                                rows -> {
                                    rows.add("K-\"1\"", new BigDecimal("12.50"), "a\u001b\n=b");
                                    rows.add("K-2", null, "");
                                }))
                .isEqualToNormalizingNewlines(
                        """
                        {"rows":[
                        {"kit":"K-\\"1\\"","unit_cost":"12.50","reason":"a\\u001B\\n=b"}
                        ,{"kit":"K-2","unit_cost":null,"reason":""}
                        ]}
                        """);
        assertThat(printed(Format.JSON, 80, false, rows -> {}))
                .isEqualToNormalizingNewlines("{\"rows\":[\n]}\n");
    }

    /**
     * RFC 4180, section 2: CRLF ends a record (1), quotes and commas are quoted (6), doubled (7).
     */
    @Test
    void csv_follows_rfc_4180() {
        assertThat(
                        printed(
                                Format.CSV,
                                80,
                                false,
                                rows -> rows.add("a \"b\", c", "1", "two\r\nlines")))
                .isEqualTo("kit,unit_cost,reason\r\n\"a \"\"b\"\", c\",1,\"two\r\nlines\"\r\n");
    }

    @Test
    void csv_text_that_looks_like_a_formula_is_guarded_and_numbers_are_not() {
        assertThat(printed(Format.CSV, 80, false, rows -> rows.add("-1", "-12.5", "=1+1")))
                .endsWith("'-1,-12.5,'=1+1\r\n");
        assertThat(printed(Format.CSV, 80, false, rows -> rows.add("+a", "-1+cmd", "@b")))
                .endsWith("'+a,'-1+cmd,'@b\r\n");
        assertThat(printed(Format.CSV, 80, false, rows -> rows.add("\tx", "+3", "a=b")))
                .endsWith("'\tx,+3,a=b\r\n");
    }

    @Test
    void a_row_of_another_length_is_a_mistake_of_the_program() {
        assertThatThrownBy(() -> table(80, rows -> rows.add("K-1")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("1 cells for 3 columns");
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void rows_are_written_as_they_come(Format format) {
        AtomicLong written = new AtomicLong();
        Writer counting =
                new Writer() {
                    @Override
                    public void write(char[] text, int from, int length) {
                        written.addAndGet(length);
                    }

                    @Override
                    public void flush() {}

                    @Override
                    public void close() {}
                };
        try (Rows rows =
                new Printer(new PrintWriter(counting), false, 80, () -> {}).rows(format, COLUMNS)) {
            for (int i = 0; i < 100_000; i++) {
                rows.add("K-" + i, i, "reason");
            }
            assertThat(written.get())
                    .as("characters written before the end")
                    .isGreaterThan(1_500_000);
        }
    }

    @Test
    void spare_columns_are_left_out_of_a_narrow_table_the_last_first_and_that_is_said() {
        List<Column> columns =
                List.of(
                        Column.text("claim"),
                        Column.text("work_order").asSpare(),
                        Column.text("vin").asSpare(),
                        Column.number("total"));
        Consumer<Rows> one = rows -> rows.add("C-1", "W26-1", "0TRTP3S26RS000501", "12.50");
        assertThat(printed(columns, 60, one))
                .isEqualToNormalizingNewlines(
                        """
                        claim  work order  vin                total
                        -----  ----------  -----------------  -----
                        C-1    W26-1       0TRTP3S26RS000501  12.50
                        """);
        assertThat(printed(columns, 40, one))
                .isEqualToNormalizingNewlines(
                        """
                        claim  work order  total
                        -----  ----------  -----
                        C-1    W26-1       12.50
                        (no room for vin; a wider window shows
                        all columns)
                        """);
        assertThat(printed(columns, 20, one)).doesNotContain("W26-1");
        assertThat(printed(columns, 20, one))
                .endsWith(
                        """
                        (no room for work
                        order, vin; a wider
                        window shows all
                        columns)
                        """);
        assertThat(printed(columns, 10, one)).contains("vin         0TRTP3S26RS000501");
    }

    @Test
    void details_go_before_spare_columns_and_empty_ones_before_both_without_a_word() {
        List<Column> columns =
                List.of(
                        Column.text("claim"),
                        Column.text("vin").asDetail(),
                        Column.number("labour").asSpare(),
                        Column.text("ended").asSpare(),
                        Column.number("total"));
        Consumer<Rows> one = rows -> rows.add("C-1", "0TRTP3S26RS000501", "110.00", null, "12.50");
        assertThat(printed(columns, 42, one))
                .isEqualToNormalizingNewlines(
                        """
                        claim  vin                labour  total
                        -----  -----------------  ------  -----
                        C-1    0TRTP3S26RS000501  110.00  12.50
                        """);
        assertThat(printed(columns, 30, one))
                .isEqualToNormalizingNewlines(
                        """
                        claim  labour  total
                        -----  ------  -----
                        C-1    110.00  12.50
                        (no room for vin; a wider
                        window shows all columns)
                        """);
    }

    @Test
    void a_column_that_was_empty_at_first_is_missed_where_something_comes_later() {
        List<Column> columns =
                List.of(Column.text("claim"), Column.text("reason").asSpare(), Column.text("job"));
        Consumer<Rows> many =
                rows -> {
                    for (int i = 0; i < 5_000; i++) {
                        rows.add("C-" + i, i < 4_999 ? null : "of the maker's own", "N-1");
                    }
                };
        assertThat(printed(columns, 14, many)).contains("(no room for\nreason; a");
    }

    private static String printed(List<Column> columns, int width, Consumer<Rows> work) {
        return printed(Format.TABLE, width, true, columns, work);
    }
}
