package counterbench.month.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.acts.rack.Board;
import counterbench.acts.rack.Exposure;
import counterbench.acts.store.ReadRack;
import counterbench.db.TestStores;
import counterbench.month.sheet.BookKind;
import counterbench.month.sheet.SiteMonth;
import counterbench.review.store.FindingBook;
import counterbench.shared.Progress;
import counterbench.shared.Site;
import counterbench.sheets.poi.WorkbookWriter;
import counterbench.sheets.report.ReportLayouts;
import counterbench.shell.Larkmere;
import counterbench.shell.rack.CoreSendCommand;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds what the warranty workbook says is owed for cores against the living board's own sums. */
class OwedForCoresTest {
    private static final YearMonth APRIL = YearMonth.of(2026, 4);

    @TempDir Path folder;

    private ReadBook warranty(Larkmere larkmere, Site site, YearMonth month, Instant now) {
        Path file = folder.resolve("warranty.xlsx");
        new ExportMonth(larkmere.store(), new WorkbookWriter())
                .run(
                        new ExportMonth.Request(
                                BookKind.WARRANTY,
                                new SiteMonth(site, month),
                                ReportLayouts.programs("warranty"),
                                now,
                                file),
                        Progress.SILENT);
        return new ReadBook(file);
    }

    private static Map<String, BigDecimal> byCampaignAndAge(List<Map<String, String>> cores) {
        Map<String, BigDecimal> sums = new TreeMap<>();
        cores.stream()
                .filter(row -> !cell(row, "Owed").isEmpty())
                .forEach(
                        row ->
                                sums.merge(
                                        row.get("Campaign") + ", " + row.get("Age"),
                                        new BigDecimal(cell(row, "Owed")),
                                        BigDecimal::add));
        return sums;
    }

    private static String cell(Map<String, String> row, String heading) {
        return Objects.requireNonNull(row.get(heading), heading);
    }

    private static Map<String, BigDecimal> board(Larkmere larkmere, Site site, Instant at) {
        var findings =
                new FindingBook(larkmere.store())
                        .asOf(site, at, Long.MAX_VALUE, f -> true, jobs -> {});
        var owed = new ReadRack(larkmere.store(), site, at).owed(findings, jobs -> {});
        Map<String, BigDecimal> sums = new TreeMap<>();
        Exposure.of(owed, site.dayOf(at))
                .forEach(e -> sums.put(e.campaign() + ", " + e.age().words(), e.charge()));
        return sums;
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void the_workbook_says_what_the_board_says_at_its_moment(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            for (Site site : List.of(Larkmere.NORTH, Larkmere.SOUTH)) {
                Map<String, BigDecimal> today = board(larkmere, site, Larkmere.AS_OF);
                try (ReadBook book = warranty(larkmere, site, APRIL, Larkmere.AS_OF)) {
                    assertThat(today).isNotEmpty();
                    assertSame(byCampaignAndAge(book.rows("Cores")), today);
                    assertThat(atRisk(book))
                            .isPositive()
                            .isEqualByComparingTo(boardsRisk(larkmere, site, Larkmere.AS_OF));
                }
                Instant end = new SiteMonth(site, APRIL.minusMonths(1)).end().minusMillis(1);
                try (ReadBook book =
                        warranty(larkmere, site, APRIL.minusMonths(1), Larkmere.AS_OF)) {
                    assertSame(byCampaignAndAge(book.rows("Cores")), board(larkmere, site, end));
                    assertThat(atRisk(book)).isEqualByComparingTo(boardsRisk(larkmere, site, end));
                }
            }
        }
    }

    private static BigDecimal atRisk(ReadBook book) {
        return book.rows("Cores").stream()
                .map(row -> cell(row, "At risk"))
                .filter(cell -> !cell.isEmpty())
                .map(BigDecimal::new)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal boardsRisk(Larkmere larkmere, Site site, Instant at) {
        var findings =
                new FindingBook(larkmere.store())
                        .asOf(site, at, Long.MAX_VALUE, f -> true, jobs -> {});
        Board board =
                new Board(new ReadRack(larkmere.store(), site, at).undecided(findings, jobs -> {}));
        LocalDate day = site.dayOf(at);
        return board.late(day).charge().add(board.within(Integer.MAX_VALUE, day).charge());
    }

    private static void assertSame(Map<String, BigDecimal> said, Map<String, BigDecimal> wanted) {
        assertThat(said.keySet()).isEqualTo(wanted.keySet());
        wanted.forEach(
                (what, sum) -> assertThat(said.get(what)).as(what).isEqualByComparingTo(sum));
    }

    @Test
    void a_core_that_was_never_removed_is_owed_and_not_forgotten() {
        try (Larkmere larkmere = Larkmere.full(TestStores.H2);
                ReadBook book = warranty(larkmere, Larkmere.NORTH, APRIL, Larkmere.AS_OF)) {
            assertThat(book.rows("Cores"))
                    .filteredOn(row -> cell(row, "State").equals("never removed"))
                    .singleElement()
                    .satisfies(
                            row ->
                                    assertThat(row)
                                            .containsEntry("Core tag", "")
                                            .containsEntry("Job", "N-103")
                                            .containsEntry("Campaign", "HB-0429")
                                            .containsEntry("Age", "over 90 days"));
            assertThat(book.texts("Cores"))
                    .contains(
                            "Owed for cores, by campaign and age",
                            "Campaign, Age",
                            "HB-0417, up to 30 days",
                            "HB-0429, over 90 days")
                    .noneMatch(text -> text.contains("not said"));
        }
    }

    @Test
    void the_yard_of_a_core_stands_beside_its_state_until_it_has_left() {
        try (Larkmere larkmere = Larkmere.full(TestStores.H2)) {
            larkmere.shellOf(Larkmere.HAL, new CoreSendCommand(larkmere::store, larkmere.sites()))
                    .line("core send NC-0072 --to SOUTH");
            try (ReadBook book = warranty(larkmere, Larkmere.NORTH, APRIL, Larkmere.AS_OF)) {
                Map<String, String> yards = new TreeMap<>();
                book.rows("Cores")
                        .forEach(
                                row ->
                                        yards.put(
                                                cell(row, "Core tag"),
                                                cell(row, "State") + " " + cell(row, "Yard")));
                assertThat(yards)
                        .containsEntry("NC-0072", "in-transit SOUTH")
                        .containsEntry("NC-0001", "packed NORTH")
                        .containsEntry("NC-0038", "shipped ");
            }
        }
    }
}
