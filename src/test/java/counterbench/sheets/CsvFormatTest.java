package counterbench.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.facts.FactRow;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Checks against RFC 4180, section 2, by its rules' numbers. */
class CsvFormatTest {
    @TempDir Path folder;

    private List<FactRow> people(String content) {
        return Read.facts(Read.file(folder, "people.csv", content));
    }

    @Test
    void records_end_in_crlf_or_lf_and_the_last_need_not_rules_1_and_2() {
        assertThat(people("name,roles\r\nAda,lead\r\nBo,parts")).hasSize(2);
        assertThat(people("name,roles\nAda,lead\nBo,parts\n")).hasSize(2);
    }

    @Test
    void quotation_marks_enclose_commas_and_doubled_marks_rules_5_to_7() {
        assertThat(people("\"name\",roles\n\"Ada \"\"the wrench\"\", jr\",lead\n"))
                .extracting(p -> p.text("name"))
                .containsExactly("Ada \"the wrench\", jr");
    }

    @Test
    void every_row_has_as_many_cells_as_there_are_headings_rule_4() {
        Path file = Read.file(folder, "people.csv", "name,roles\nAda,lead,\nBo\nCy,parts\n");
        assertThat(Read.problems(file))
                .containsExactly(
                        "people.csv, row 2: has 3 cells under 2 headings; give each heading one"
                                + " cell, and put a cell with a comma into quotation marks",
                        "people.csv, row 3: has 1 cell under 2 headings; give each heading one"
                                + " cell, and put a cell with a comma into quotation marks",
                        "people.csv, row 3, roles: is empty; every row of people needs it");
    }

    @Test
    void a_quotation_mark_inside_an_unquoted_cell_is_refused_rule_5() {
        assertThat(Read.refusal(Read.file(folder, "people.csv", "name,roles\nA\"da,lead\n")))
                .singleElement()
                .asString()
                .startsWith("people.csv, row 2: has a quotation mark inside the cell");
        assertThat(Read.refusal(Read.file(folder, "people.csv", "name,roles\n\"A\"da,lead\n")))
                .singleElement()
                .asString()
                .startsWith("people.csv, row 2: a cell goes on after its closing quotation mark");
    }

    @Test
    void a_cell_that_never_ends_is_refused() {
        assertThat(Read.refusal(Read.file(folder, "people.csv", "name,roles\n\"Ada,lead\n")))
                .singleElement()
                .asString()
                .contains("ends inside a cell");
    }

    @Test
    void blank_rows_are_passed_over_and_counted() {
        Path file = Read.file(folder, "people.csv", "\nname,roles\n\n , \n,,\nAda,x\n");
        assertThat(Read.problems(file)).hasSize(1);
        assertThat(Read.problems(file).get(0)).startsWith("people.csv, row 6, roles \"x\"");
    }

    @Test
    void a_byte_order_mark_of_utf_8_is_not_text() {
        assertThat(people("\ufeffname,roles\nAda,lead\n")).hasSize(1);
    }

    @Test
    void bytes_that_are_not_utf_8_are_refused_by_row() {
        byte[] latin = "name,roles\nAda,lead\nJörg,lead\n".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(Read.refusal(Read.file(folder, "people.csv", latin)))
                .containsExactly(
                        "people.csv, row 3: is not written in UTF-8; save the file as CSV in"
                                + " UTF-8");
    }

    @Test
    void characters_beyond_the_buffer_and_of_four_bytes_come_whole() {
        StringBuilder sheet = new StringBuilder("name,roles\n");
        for (int i = 0; i < 20_000; i++) {
            sheet.append("𝄞é漆").append(i).append(",lead\n");
        }
        assertThat(people(sheet.toString()))
                .hasSize(20_000)
                .allSatisfy(p -> assertThat(p.text("name")).startsWith("𝄞é漆"));
    }

    @Test
    void an_apostrophe_that_guards_text_from_being_run_is_taken_off() {
        assertThat(
                        people(
                                "name,roles\n'=1+1,lead\n'@Bo,lead\nO'Neil,lead\n'quoted',lead\n-5,lead\n"))
                .extracting(p -> p.text("name"))
                .containsExactly("=1+1", "@Bo", "O'Neil", "'quoted'", "-5");
    }

    @Test
    void text_that_a_spreadsheet_would_run_is_guarded() {
        // CWE-1236; OWASP ASVS 5.0, 1.2.10
        assertThat(List.of("=1+1", "+49", "-5", "@x", "\tx", "\rx", "'=1", "''@"))
                .allMatch(t -> CsvGuard.guarded(t).equals("'" + t))
                .allMatch(t -> CsvGuard.unguarded(CsvGuard.guarded(t)).equals(t));
        assertThat(CsvGuard.guarded("QM-4473")).isEqualTo("QM-4473");
    }
}
