package counterbench.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.facts.FactRow;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellsTest {
    @TempDir Path folder;

    private FactRow use(String cells) {
        String sheet = "job,part,quantity,condition,at,reason\n" + cells + "\n";
        return Read.facts(Read.file(folder, "uses.csv", sheet)).get(0);
    }

    private String problem(String name, String headings, String cells) {
        List<String> problems =
                Read.problems(Read.file(folder, name + ".csv", headings + "\n" + cells + "\n"));
        assertThat(problems).hasSize(1);
        return problems.get(0);
    }

    private String timeProblem(String at) {
        return problem("uses", "job,part,quantity,condition,at", "J-1,QM-1,1,new," + at);
    }

    private Instant time(String at) {
        return Objects.requireNonNull(use("J-1,QM-1,1,new," + at + ",").time("at"));
    }

    @Test
    void a_row_becomes_a_fact_of_typed_values() {
        FactRow row = use("J-118, QM-4473 ,3.50,NEW,2026-03-05T14:20-06:00,\"fell, lost\"");

        assertThat(row.values())
                .startsWith("J-118", "QM-4473", new BigDecimal("3.500"), "new")
                .contains(Instant.parse("2026-03-05T20:20:00Z"), "fell, lost");
        assertThat(row.get("kit")).isNull();
        assertThat(row.ref()).isNull();
    }

    @ParameterizedTest
    @CsvSource({
        "2026-03-05T14:20-06:00, 2026-03-05T20:20:00Z",
        "2026-03-05T14:20:07Z, 2026-03-05T14:20:07Z",
        "2026-03-05T14:20:07.123456789Z, 2026-03-05T14:20:07.123456Z",
        "2026-03-05t14:20z, 2026-03-05T14:20:00Z",
        "2026-03-05T14:20+0530, 2026-03-05T08:50:00Z",
        "2026-03-05T14:20+05, 2026-03-05T09:20:00Z",
        "2026-03-05 14:20, 2026-03-05T20:20:00Z",
        "2026-07-05T14:20:01.5, 2026-07-05T19:20:01.500Z"
    })
    void times_are_iso_8601_with_an_offset_or_local_to_the_site(String written, Instant at) {
        assertThat(time(written)).isEqualTo(at);
    }

    @Test
    void a_local_time_that_the_clock_skips_is_refused_naming_the_change() {
        assertThat(timeProblem("2026-03-08 02:30"))
                .isEqualTo(
                        "uses.csv, row 2, at \"2026-03-08 02:30\": did not exist in"
                                + " America/Chicago: clocks went from 2026-03-08T02:00 to"
                                + " 2026-03-08T03:00; add the offset: 2026-03-08T03:30-05:00 may"
                                + " be meant");
        assertThat(time("2026-03-08 03:00")).isEqualTo("2026-03-08T08:00:00Z");
    }

    @Test
    void a_local_time_that_the_clock_shows_twice_is_refused_saying_both_offsets() {
        assertThat(timeProblem("2026-11-01 01:30"))
                .contains("was there twice in America/Chicago")
                .endsWith("2026-11-01T01:30-05:00 or 2026-11-01T01:30-06:00");
        assertThat(time("2026-11-01T01:30-06:00")).isEqualTo("2026-11-01T07:30:00Z");
    }

    @Test
    void local_times_are_those_of_the_site_that_the_row_names() {
        String sheet = "site,counted_at,quantity,part\nEAST,2026-03-05 14:20,0,QM-1\n";
        ParsedRow row = Read.csv(folder, "counts.csv", sheet).get(0);

        assertThat(row.site()).isEqualTo("EAST");
        FactRow count = Objects.requireNonNull(row.fact());
        assertThat(count.time("counted_at")).isEqualTo("2026-03-05T19:20:00Z");
    }

    @ParameterizedTest
    @CsvSource({
        "2026-02-29 10:00, is a time that there is not",
        "2026-03-05 24:00, is a time that there is not",
        "2026-03-05, has no time of day",
        "03/05/2026 10:00, is not a time",
        "46086.5, is not a time",
        "0026-03-05 10:00, is in the year 26",
        "2026-03-05T14:20+99:00, is a time that there is not"
    })
    void other_times_are_refused(String written, String why) {
        assertThat(timeProblem(written)).contains('"' + written + "\": " + why);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-02-30, is a day that there is not",
        "05.03.2026, is not a day",
        "2026-03-05 10:00, has a time of day",
        "45, is not a day"
    })
    void other_days_are_refused(String written, String why) {
        assertThat(problem("credits", "remittance,line,amount,paid_on", "R-1,1,5," + written))
                .isEqualTo(
                        "credits.csv, row 2, paid_on \""
                                + written
                                + "\": "
                                + why
                                + "; write it as 2026-03-05");
    }

    @ParameterizedTest
    @CsvSource({
        "'1,5', has a comma",
        "'1,234.00', has a comma",
        "1e5, is written as a power of ten",
        "$5, has a currency sign",
        "€ 5, has a currency sign",
        "five, is not a number",
        "1.5 mL, is not a number",
        ".5, is not a number",
        "+5, is not a number",
        "١, is not a number",
        "-1, is below zero",
        "1.2345, has more than 3 decimal places; round it, such as 1.234",
        "1234567890123, is too large"
    })
    void quantities_are_plain_decimals(String written, String why) {
        String cell = '"' + written + '"';
        assertThat(
                        problem(
                                "receipts",
                                "part,quantity,received_at",
                                "QM-1," + cell + ",2026-03-05 10:00"))
                .contains("quantity \"" + written + "\": " + why);
    }

    @Test
    void readings_and_credits_may_be_below_zero() {
        String marks = "job,step,at,value,minutes\nJ-1,cold,2026-03-05 10:00,-12.5,\n";
        String credits = "remittance,line,amount,paid_on,kind\nR-1,1,-480.00,2026-03-05,reversal\n";

        assertThat(Read.facts(Read.file(folder, "marks.csv", marks)).get(0).decimal("value"))
                .isEqualByComparingTo("-12.5");
        assertThat(Read.facts(Read.file(folder, "credits.csv", credits)).get(0).get("amount"))
                .isEqualTo(new BigDecimal("-480.000"));
    }

    @Test
    void a_whole_number_has_no_fraction_and_no_sign() {
        String headings = "job,step,at,fastener";
        assertThat(problem("marks", headings, "J-1,clamp,2026-03-05 10:00,1.5"))
                .contains("is not whole");
        assertThat(problem("marks", headings, "J-1,clamp,2026-03-05 10:00,-1"))
                .contains("is below zero");
        String sheet = headings + "\nJ-1,clamp,2026-03-05 10:00,4.0\n";
        assertThat(Read.facts(Read.file(folder, "marks.csv", sheet)).get(0).whole("fastener"))
                .isEqualTo(4L);
    }

    @Test
    void a_word_is_one_of_its_columns_words() {
        assertThat(problem("uses", "job,part,quantity,condition,at", "J,P,1,old,2026-03-05 10:00"))
                .isEqualTo(
                        "uses.csv, row 2, condition \"old\": is not known here; write one of new,"
                                + " reused, taken-off, scrapped, put-back, on-core");
    }

    @Test
    void a_required_cell_may_not_be_empty() {
        assertThat(problem("uses", "job,part,quantity,condition,at", "J,  ,1,new,2026-03-05 10:00"))
                .isEqualTo("uses.csv, row 2, part \"  \": is empty; every row of uses needs it");
    }

    @Test
    void text_hides_nothing_and_is_not_too_long() {
        String headings = "job,part,quantity,condition,at,reason";
        String start = "J-1,QM-1,1,new,2026-03-05 10:00,";
        assertThat(problem("uses", headings, start + "a\u001b[31mb"))
                .contains("\"a\\u001b[31mb\"")
                .contains("cannot be seen");
        assertThat(problem("uses", headings, start + "\"a\nb\"")).contains("line break");
        assertThat(problem("uses", headings, start + "QM\u200b")).contains("cannot be seen");
        assertThat(problem("uses", headings, start + "x".repeat(1001)))
                .contains("has 1001 characters; at most 1000");
        assertThat(use(start + "x".repeat(1000)).text("reason")).hasSize(1000);
        assertThat(use(start + "\u00a0gefärbt 漆 \u00a0").text("reason")).isEqualTo("gefärbt 漆");
    }

    @Test
    void missing_parts_travel_sorted() {
        String headings = "kit,kit_part,received_at,missing";
        String start = "K-1,QM-K,2026-03-05 10:00,";
        String sheet = headings + "\n" + start + "QM-4476 : 2.0;QM-4473:1\n";
        assertThat(Read.facts(Read.file(folder, "kits.csv", sheet)).get(0).text("missing"))
                .isEqualTo("QM-4473:1; QM-4476:2");
        assertThat(problem("kits", headings, start + "QM-4473")).contains("write it as");
        assertThat(problem("kits", headings, start + "QM-4473:-1")).contains("write it as");
        assertThat(problem("kits", headings, start + "A:1;A:2")).contains("names A twice");
        assertThat(problem("kits", headings, start + "A:0")).contains("quantity of zero");
    }

    @Test
    void roles_travel_sorted() {
        String sheet = "name,roles\nAda,\"Parts, lead,parts\"\n";
        assertThat(Read.facts(Read.file(folder, "people.csv", sheet)).get(0).text("roles"))
                .isEqualTo("lead, parts");
        assertThat(problem("people", "name,roles", "Ada,boss"))
                .contains("\"boss\" is no role; roles are parts, technician, warranty, lead");
    }

    @Test
    void every_problem_of_a_row_is_told() {
        String sheet = "job,part,quantity,condition,at\n,QM-1,x,old,now\n";
        List<ParsedRow> rows = Read.csv(folder, "uses.csv", sheet);

        assertThat(rows).singleElement().extracting(ParsedRow::fact).isNull();
        assertThat(rows.get(0).problems())
                .extracting(RowProblem::heading)
                .containsExactly("job", "quantity", "condition", "at");
    }
}
