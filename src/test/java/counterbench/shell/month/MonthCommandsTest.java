package counterbench.shell.month;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reconciling and balances over the invented garage of the demo data. */
class MonthCommandsTest {
    private static final String HEADINGS =
            "table,site,campaign,month,part,completed_jobs,required,fitted_new,refitted_old,"
                    + "opening,received,transferred_in,transferred_out,fitted,on_cores,scrapped,"
                    + "left_on_benches,difference,jobs,returned,count_difference,closing_book,"
                    + "closing_count,unexplained";
    private static final String RECONCILE =
            "reconcile --site NORTH --month 2026-03 --as-of \"2026-04-10 12:00\" --campaign ";
    private static Larkmere larkmere;

    @BeforeAll
    static void open() {
        larkmere = Larkmere.full(TestStores.H2);
    }

    @AfterAll
    static void close() {
        larkmere.close();
    }

    private static FakeShell.Output type(String line) {
        return larkmere.shell().line(line);
    }

    @Test
    void programs_see_the_words_that_they_may_rely_on() {
        List<String> lines = type(RECONCILE + "HB-0417 --format csv").out().lines().toList();
        assertThat(lines.get(0)).isEqualTo(HEADINGS);
        assertThat(lines).anyMatch(line -> line.startsWith("consumption,NORTH,HB-0417,2026-03,"));
        assertThat(lines).anyMatch(line -> line.startsWith("goods,NORTH,HB-0417,2026-03,"));
    }

    @Test
    void a_row_has_null_under_the_words_of_the_other_table() {
        List<String> rows =
                type(RECONCILE + "HB-0417 --format json")
                        .out()
                        .lines()
                        .filter(line -> line.contains("\"table\""))
                        .toList();
        assertThat(rows).isNotEmpty();
        for (String row : rows) {
            boolean goods = row.contains("\"table\":\"goods\"");
            assertThat(row).contains(goods ? "\"required\":null" : "\"opening\":null");
            assertThat(row).containsPattern(goods ? "\"opening\":\"" : "\"required\":\"");
            assertThat(row).contains("\"scrapped\":\"");
        }
    }

    @Test
    void people_see_two_tables_each_with_its_own_columns() {
        String out = type(RECONCILE + "HB-0417").out();
        assertThat(out)
                .startsWith("Consumption of HB-0417, 2026-03, site NORTH")
                .contains("Goods of HB-0417, 2026-03, site NORTH");
        assertThat(out.lines().filter(line -> line.startsWith("part ")).toList())
                .satisfiesExactly(
                        consumption ->
                                assertThat(consumption)
                                        .containsSubsequence(
                                                "required", "refitted old", "scrapped", "jobs"),
                        goods ->
                                assertThat(goods)
                                        .containsSubsequence(
                                                "opening", "on cores", "scrapped", "closing"));
    }

    @Test
    void strict_ends_with_3_where_a_job_or_a_count_is_one_to_look_at() {
        assertThat(type(RECONCILE + "HB-0417").status()).isEqualTo(Status.DONE);
        assertThat(type(RECONCILE + "HB-0417 --strict").status()).isEqualTo(Status.FOUND);
        assertThat(
                        type("reconcile --site NORTH --month 2025-03 --campaign HB-0417 --strict")
                                .status())
                .isEqualTo(Status.DONE);
    }

    @Test
    void an_entry_that_there_is_not_is_refused() {
        assertThat(type(RECONCILE + "HB-0417 --known 999").err())
                .contains("--known \"999\": site NORTH ends with entry ");
    }

    @Test
    void nothing_is_known_before_the_first_entry() {
        String out = type(RECONCILE + "HB-0417 --known 1 --format csv").out();
        assertThat(out.lines().filter(line -> line.startsWith("consumption")))
                .allMatch(line -> line.contains(",0,0,0,0,,,,,,,0,0,0,,"));
    }

    @Test
    void what_there_is_not_is_refused() {
        assertThat(type(RECONCILE + "HB-0471").err()).contains("did you mean HB-0417?");
        assertThat(type("reconcile --campaign HB-0417 --month 2026-13").status())
                .isEqualTo(Status.USAGE);
        assertThat(type("reconcile --month 2026-03 --campaign HB-0417").err())
                .contains("several sites");
        assertThat(type("balance --account STOER --site NORTH").err())
                .contains("is no account; did you mean STORE?");
        assertThat(type("balance --account STORE(1) --site NORTH").err())
                .contains("there is only one STORE");
        FakeShell.Output part = type("balance --part HB-3O13 --site NORTH");
        assertThat(part.status()).isEqualTo(Status.REFUSED);
        assertThat(part.err())
                .isEqualTo(
                        "part \"HB-3O13\": no pack, list or receipt knows it; did you mean"
                                + " HB-3013?\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "BENCH(N-1O4)|there is no such job; did you mean BENCH(N-104)?",
                "vehicle(N-1O4)|there is no such job; did you mean VEHICLE(N-104)?",
                "KIT(FP-1O01)|there is no such kit; did you mean KIT(FP-1001)?",
                "CORE(NC-OO01)|there is no such core; did you mean CORE(NC-0001)?",
                "TRANSIT(SUOTH)|there is no such site; did you mean TRANSIT(SOUTH)?",
                "BENCH(X)|there is no such job; balance --account BENCH shows all that hold something"
            })
    void an_account_that_nothing_bears_is_refused(String account, String why) {
        FakeShell.Output output = type("balance --site NORTH --account \"" + account + "\"");
        assertThat(output.status()).isEqualTo(Status.REFUSED);
        assertThat(output.err()).startsWith("account \"").endsWith("\": " + why + "\n");
    }

    @Test
    void an_account_that_holds_nothing_now_is_none_and_no_mistake() {
        FakeShell.Output output = type("balance --site NORTH --account \"BENCH(N-104)\"");
        assertThat(output.status()).as(output.err()).isEqualTo(Status.DONE);
        assertThat(
                        type("balance --site NORTH --account \"BENCH(N-104)\" --format csv")
                                .out()
                                .lines())
                .hasSize(1);
    }

    @Test
    void every_part_adds_up_to_zero_over_all_accounts() {
        Map<String, BigDecimal> sums = new HashMap<>();
        type("balance --site NORTH --format csv")
                .out()
                .lines()
                .skip(1)
                .map(line -> line.split(","))
                .forEach(row -> sums.merge(row[2], new BigDecimal(row[3]), BigDecimal::add));
        assertThat(sums).isNotEmpty();
        assertThat(sums.values()).allMatch(sum -> sum.signum() == 0);
    }

    @Test
    void accounts_and_parts_can_be_picked() {
        List<String> all = type("balance --site NORTH --format csv").out().lines().toList();
        assertThat(type("balance --site NORTH --format csv --account bench").out().lines())
                .containsExactlyInAnyOrderElementsOf(
                        all.stream()
                                .filter(l -> l.contains(",BENCH(") || l.startsWith("site,"))
                                .toList());
        String bench = all.stream().filter(l -> l.contains(",BENCH(")).findFirst().orElseThrow();
        String[] cells = bench.split(",", -1);
        assertThat(
                        type("balance --site NORTH --format csv --account \""
                                        + cells[1]
                                        + "\" --part "
                                        + cells[2])
                                .out())
                .isEqualTo("site,account,part,quantity\r\n" + bench + "\r\n");
    }
}
