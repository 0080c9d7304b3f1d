package counterbench.month.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.Store;
import counterbench.db.TestStores;
import counterbench.journal.Entry;
import counterbench.judgement.Finding;
import counterbench.month.ConsumptionRow;
import counterbench.month.GoodsRow;
import counterbench.month.MonthAccount;
import counterbench.month.sheet.BookKind;
import counterbench.month.sheet.SiteMonth;
import counterbench.oracle.Garage;
import counterbench.oracle.GarageOptions;
import counterbench.oracle.GarageWriter;
import counterbench.review.store.ReviewSite;
import counterbench.shared.Progress;
import counterbench.shared.Quantity;
import counterbench.shared.Site;
import counterbench.sheets.poi.WorkbookWriter;
import counterbench.sheets.report.ReportLayouts;
import java.nio.file.Path;
import java.time.Instant;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Writes both workbooks of a written garage and holds what they say against the tables. */
class ExportMonthTest {
    private static final YearMonth MONTH = YearMonth.of(2026, 6);

    @TempDir Path folder;

    @ParameterizedTest
    @CsvSource({"H2,21,250", "POSTGRES,22,150"})
    void both_workbooks_say_what_account_and_review_say(TestStores kind, long seed, int jobs) {
        Garage garage = GarageWriter.write(seed, GarageOptions.of(jobs).scattered(2), folder);
        Site site = TakenIn.site(garage);
        try (Store store = kind.open()) {
            TakenIn.run(store, garage, site);
            MonthAccount account =
                    new ReconcileMonth(store)
                            .run(site, MONTH, garage.asOf(), ReviewSite.NEWEST, n -> {});
            List<Finding> found =
                    new ReviewSite(store).run(site, garage.asOf(), ReviewSite.NEWEST, n -> {});
            try (ReadBook parts = written(BookKind.PARTS, store, site, garage.asOf());
                    ReadBook warranty = written(BookKind.WARRANTY, store, site, garage.asOf())) {
                assertThat(parts.sheets())
                        .containsExactly(
                                "Balance",
                                "Consumption",
                                "Movements",
                                "Kits",
                                "Expiry",
                                "Counts",
                                "Findings",
                                "Notes");
                tables(parts, account, seed);
                movements(parts, seed);
                findings(parts, warranty, found, seed);
                jobsAndEvidence(warranty, account, seed);
            }
        }
    }

    private ReadBook written(BookKind kind, Store store, Site site, Instant now) {
        Path file = folder.resolve(kind.word() + ".xlsx");
        Optional<Entry> newest =
                new ExportMonth(store, new WorkbookWriter())
                        .run(
                                new ExportMonth.Request(
                                        kind,
                                        new SiteMonth(site, MONTH),
                                        ReportLayouts.programs(kind.word()),
                                        now,
                                        file),
                                Progress.SILENT);
        ReadBook book = new ReadBook(file);
        assertThat(book.texts("Notes")).contains(newest.orElseThrow().hash());
        return book;
    }

    private static void tables(ReadBook parts, MonthAccount account, long seed) {
        Map<String, String> closings = new TreeMap<>();
        for (GoodsRow row : account.allGoods()) {
            closings.put(row.part(), text(row.opening()) + " to " + text(row.closingBook()));
        }
        List<Map<String, String>> balance = parts.rows("Balance");
        assertThat(balance).as("seed %s", seed).isNotEmpty();
        balance.forEach(
                row ->
                        assertThat(row.get("Opening") + " to " + row.get("Closing by book"))
                                .as("%s, seed %s", row, seed)
                                .isEqualTo(closings.get(row.get("Part"))));
        List<Map<String, String>> consumption = parts.rows("Consumption");
        for (String campaign : account.campaigns()) {
            for (ConsumptionRow row : account.consumption(campaign)) {
                if (row.completedJobs() > 0) {
                    assertThat(consumption)
                            .as("%s of %s, seed %s", row, campaign, seed)
                            .anySatisfy(
                                    cells ->
                                            assertThat(cells)
                                                    .containsEntry("Campaign", campaign)
                                                    .containsEntry("Part", row.part())
                                                    .containsEntry(
                                                            "Difference", text(row.difference())));
                }
            }
        }
    }

    /** Opening plus every movement makes the closing, part by part. */
    private static void movements(ReadBook parts, long seed) {
        Map<String, Quantity> changes = new TreeMap<>();
        for (Map<String, String> row : parts.rows("Movements")) {
            Quantity quantity = Quantity.of(cell(row, "Quantity"));
            if (isStock(cell(row, "To"))) {
                changes.merge(cell(row, "Part"), quantity, Quantity::plus);
            }
            if (isStock(cell(row, "From"))) {
                changes.merge(cell(row, "Part"), quantity.negate(), Quantity::plus);
            }
        }
        for (Map<String, String> row : parts.rows("Balance")) {
            Quantity change = changes.getOrDefault(cell(row, "Part"), Quantity.ZERO);
            assertThat(Quantity.of(cell(row, "Opening")).plus(change))
                    .as("%s, seed %s", row, seed)
                    .isEqualTo(Quantity.of(cell(row, "Closing by book")));
        }
        assertThat(parts.rows("Movements"))
                .extracting(row -> row.get("Happened at"))
                .isSorted()
                .allMatch(at -> at != null && at.startsWith(MONTH.toString()));
    }

    private static boolean isStock(String account) {
        return account.equals("STORE")
                || account.startsWith("KIT(")
                || account.startsWith("BENCH(");
    }

    /** Every finding of the month stands in one of the workbooks. */
    private static void findings(
            ReadBook parts, ReadBook warranty, List<Finding> found, long seed) {
        TreeSet<String> shown = new TreeSet<>();
        parts.rows("Findings").forEach(row -> shown.add(line(row)));
        warranty.rows("Findings").forEach(row -> shown.add(line(row)));
        TreeSet<String> ofMonth = new TreeSet<>();
        found.stream()
                .filter(f -> MONTH.equals(f.month()))
                .forEach(f -> ofMonth.add(f.rule().word() + " " + f.message()));
        assertThat(shown).as("seed %s", seed).isEqualTo(ofMonth).isNotEmpty();
    }

    private static String line(Map<String, String> row) {
        return row.get("Rule") + " " + row.get("What was found");
    }

    private static void jobsAndEvidence(ReadBook warranty, MonthAccount account, long seed) {
        List<Map<String, String>> jobs = warranty.rows("Jobs");
        long completed =
                account.campaigns().stream()
                        .mapToLong(
                                c ->
                                        account.consumption(c).stream()
                                                .mapToLong(ConsumptionRow::completedJobs)
                                                .max()
                                                .orElse(0))
                        .sum();
        assertThat(jobs).as("seed %s", seed).hasSize(Math.toIntExact(completed)).isNotEmpty();
        List<String> names = jobs.stream().map(row -> cell(row, "Job")).toList();
        assertThat(warranty.rows("Evidence"))
                .as("seed %s", seed)
                .isNotEmpty()
                .allMatch(row -> names.contains(row.get("Job")));
        assertThat(warranty.rows("Claims"))
                .as("seed %s", seed)
                .isNotEmpty()
                .allMatch(ExportMonthTest::isOfMonthOrStillOpen);
    }

    private static boolean isOfMonthOrStillOpen(Map<String, String> claim) {
        String submitted = cell(claim, "Submitted on");
        return submitted.startsWith(MONTH.toString())
                || (submitted.compareTo(MONTH.toString()) < 0
                        && !cell(claim, "Age").equals("nothing open"));
    }

    private static String cell(Map<String, String> row, String heading) {
        @Nullable String cell = row.get(heading);
        assertThat(cell).as("%s of %s", heading, row).isNotNull();
        return String.valueOf(cell);
    }

    private static String text(Quantity quantity) {
        return quantity.toString();
    }
}
