package counterbench.month.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.Store;
import counterbench.db.TestStores;
import counterbench.month.MonthAccount;
import counterbench.oracle.Garage;
import counterbench.oracle.GarageOptions;
import counterbench.oracle.GarageWriter;
import counterbench.oracle.Oracle;
import counterbench.review.store.ReviewSite;
import counterbench.shared.Site;
import counterbench.stock.BalanceRow;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Compares the month's account and the balances with the second, naive reading in {@code
 * counterbench.oracle}. What counting found is read otherwise there, and pinned by {@code
 * GoodsTest}.
 */
class ReconcileMonthTest {
    @TempDir Path folder;

    @ParameterizedTest
    @CsvSource({"H2,11,200", "H2,12,200", "POSTGRES,13,120"})
    void every_row_of_a_written_garage_is_as_the_second_reading_has_it(
            TestStores kind, long seed, int jobs) {
        Garage garage = GarageWriter.write(seed, GarageOptions.of(jobs).scattered(2), folder);
        Site site = TakenIn.site(garage);
        Oracle oracle = garage.judge();
        try (Store store = kind.open()) {
            TakenIn.run(store, garage, site);
            for (YearMonth month : months(garage, site)) {
                compare(store, site, garage, oracle, month, seed);
            }
            assertThat(balances(store, site, garage))
                    .as("seed %s", seed)
                    .containsExactlyInAnyOrderElementsOf(
                            oracle.balances().stream()
                                    .map(
                                            b ->
                                                    b.account()
                                                            + " "
                                                            + b.part()
                                                            + " "
                                                            + text(b.quantity()))
                                    .toList());
        }
    }

    private static List<YearMonth> months(Garage garage, Site site) {
        YearMonth last = site.monthOf(garage.asOf());
        return List.of(last.minusMonths(4), last.minusMonths(2));
    }

    private static void compare(
            Store store, Site site, Garage garage, Oracle oracle, YearMonth month, long seed) {
        MonthAccount account =
                new ReconcileMonth(store)
                        .run(site, month, garage.asOf(), ReviewSite.NEWEST, jobs -> {});
        assertThat(account.campaigns()).isNotEmpty();
        for (String campaign : account.campaigns()) {
            // Rows of nothing but zeros say nothing, whichever parts they are for.
            assertThat(saying(consumption(account, campaign)))
                    .as("consumption of %s in %s, seed %s", campaign, month, seed)
                    .isEqualTo(saying(consumption(oracle, campaign, month)));
            // Older numbers that occur are shown besides; the second reading leaves them out.
            assertThat(goods(account, campaign))
                    .as("goods of %s in %s, seed %s", campaign, month, seed)
                    .containsAll(goods(oracle, campaign, month));
        }
    }

    private static List<String> saying(Set<String> rows) {
        return rows.stream().filter(row -> !row.endsWith("| 0 | 0 | 0 | 0 | 0 | 0 | []")).toList();
    }

    private static List<String> balances(Store store, Site site, Garage garage) {
        List<BalanceRow> rows = new ArrayList<>();
        new SiteBalances(store)
                .each(site, garage.asOf(), ReviewSite.NEWEST, account -> true, rows::add);
        return rows.stream().map(r -> r.account() + " " + r.part() + " " + r.quantity()).toList();
    }

    private static Set<String> consumption(MonthAccount account, String campaign) {
        Set<String> lines = new TreeSet<>();
        account.consumption(campaign)
                .forEach(
                        r ->
                                lines.add(
                                        line(
                                                r.part(),
                                                r.completedJobs(),
                                                r.required(),
                                                r.fittedNew(),
                                                r.refittedOld(),
                                                r.scrapped(),
                                                r.leftOnBenches(),
                                                r.difference(),
                                                r.jobs())));
        return lines;
    }

    private static Set<String> consumption(Oracle oracle, String campaign, YearMonth month) {
        Set<String> lines = new TreeSet<>();
        oracle.consumption(campaign, month)
                .forEach(
                        r ->
                                lines.add(
                                        line(
                                                r.part(),
                                                r.completedJobs(),
                                                text(r.required()),
                                                text(r.fittedNew()),
                                                text(r.refittedOld()),
                                                text(r.scrapped()),
                                                text(r.leftOnBenches()),
                                                text(r.difference()),
                                                new TreeSet<>(r.jobs()))));
        return lines;
    }

    private static Set<String> goods(MonthAccount account, String campaign) {
        Set<String> lines = new TreeSet<>();
        account.goods(campaign)
                .forEach(
                        r ->
                                lines.add(
                                        line(
                                                r.part(),
                                                r.opening(),
                                                r.received(),
                                                r.transferredIn(),
                                                r.transferredOut(),
                                                r.fitted(),
                                                r.onCores(),
                                                r.scrapped(),
                                                r.returned(),
                                                r.countDifference(),
                                                r.closingBook(),
                                                Optional.ofNullable(r.closingCount())
                                                        .map(Object::toString)
                                                        .orElse("-"))));
        return lines;
    }

    private static Set<String> goods(Oracle oracle, String campaign, YearMonth month) {
        Set<String> lines = new TreeSet<>();
        oracle.goods(campaign, month)
                .forEach(
                        r ->
                                lines.add(
                                        line(
                                                r.part(),
                                                text(r.opening()),
                                                text(r.received()),
                                                text(r.transferredIn()),
                                                text(r.transferredOut()),
                                                text(r.fitted()),
                                                text(r.onCores()),
                                                text(r.scrapped()),
                                                text(r.returned()),
                                                text(r.countDifference()),
                                                text(r.closingBook()),
                                                r.closingCount()
                                                        .map(ReconcileMonthTest::text)
                                                        .orElse("-"))));
        return lines;
    }

    private static String line(Object... cells) {
        List<String> texts = new ArrayList<>();
        for (Object cell : cells) {
            texts.add(String.valueOf(cell));
        }
        return String.join(" | ", texts);
    }

    private static String text(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
