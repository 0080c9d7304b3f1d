package counterbench.month;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.shared.Quantity;
import counterbench.shared.Site;
import counterbench.stock.Count;
import counterbench.stock.Ledger;
import counterbench.stock.Move;
import counterbench.stock.StockEvent.Kind;
import counterbench.stock.StockPaper;
import counterbench.stock.StoreTimeline;
import counterbench.stock.Use.Condition;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The goods table on hand-made paper. */
class GoodsTest {
    private static final Site NORTH =
            new Site(
                    1,
                    "NORTH",
                    "North garage",
                    ZoneId.of("America/Chicago"),
                    Currency.getInstance("USD"),
                    Site.Patience.USUAL);
    private static final YearMonth MARCH = YearMonth.of(2026, 3);
    private static final String WASHER = "QM-4473";

    private final StockPaper paper = new StockPaper();

    private String washersIn(YearMonth month) {
        Goods goods = new Goods(month);
        Ledger ledger = paper.ledger();
        List<Move> moves = new ArrayList<>(ledger.moves());
        StoreTimeline.ofAll(ledger.moves(), paper.counts)
                .values()
                .forEach(t -> moves.addAll(t.countMoves()));
        moves.forEach(m -> goods.add(m, NORTH.monthOf(m.at())));
        for (Count count : paper.counts) {
            goods.addCount(count, NORTH.monthOf(count.countedAt()));
        }
        return inWords(goods.rows(List.of(WASHER)).get(0));
    }

    private static String inWords(GoodsRow r) {
        return String.format(
                "open %s recv %s in %s out %s fit %s core %s scrap %s ret %s count %s"
                        + " close %s counted %s unexplained %s",
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
                r.closingCount(),
                r.unexplained());
    }

    @Test
    void every_way_in_and_out_has_its_column() {
        paper.at("2026-02-20T12:00:00Z").receipt(WASHER, "10", null);
        paper.at("2026-03-05T12:00:00Z").kit("K-1").receipt(WASHER, "20", null);
        paper.at("2026-03-06T12:00:00Z").issueKit("K-1", "J-1");
        paper.at("2026-03-06T13:00:00Z").use("J-1", WASHER, "3", Condition.NEW);
        paper.use("J-1", WASHER, "1", Condition.SCRAPPED);
        paper.at("2026-03-07T12:00:00Z").event(Kind.SENT, null, WASHER, "5");
        paper.event(Kind.RETURNED, null, WASHER, "2");
        paper.at("2026-03-08T12:00:00Z").event(Kind.ARRIVED, null, WASHER, "1");
        paper.at("2026-03-09T12:00:00Z").countPart(WASHER, "25");
        assertThat(washersIn(MARCH))
                .isEqualTo(
                        "open 10 recv 24 in 1 out 5 fit 3 core 0 scrap 1 ret 2 count 1"
                                + " close 25 counted 25 unexplained 1");
        assertThat(washersIn(MARCH.plusMonths(1)))
                .isEqualTo(
                        "open 25 recv 0 in 0 out 0 fit 0 core 0 scrap 0 ret 0 count 0"
                                + " close 25 counted null unexplained null");
    }

    @Test
    void what_is_taken_off_lowers_fitted_and_raises_scrapped() {
        paper.kit("K-1").issueKit("K-1", "J-1").use("J-1", WASHER, "3", Condition.NEW);
        paper.use("J-1", WASHER, "1", Condition.TAKEN_OFF, null, null, Condition.NEW);
        assertThat(washersIn(MARCH)).contains("fit 2 core 0 scrap 1").contains("close 1 ");
    }

    @Test
    void what_was_found_missing_lowers_received() {
        paper.kit("K-1").event(Kind.SHORT, "K-1", WASHER, "1");
        assertThat(washersIn(MARCH)).contains("recv 3").contains("close 3 ");
    }

    @Test
    void a_kit_that_is_not_found_is_a_count_difference_though_no_part_was_counted() {
        paper.kit("K-1").countKit("K-1", 0);
        assertThat(washersIn(MARCH)).contains("count -4 close 0 counted null unexplained -4");
    }

    @Test
    void a_count_that_agrees_leaves_nothing_unexplained() {
        paper.receipt(WASHER, "7", null).countPart(WASHER, "7");
        assertThat(washersIn(MARCH)).contains("count 0 close 7 counted 7 unexplained 0");
    }

    @Test
    void a_month_begins_at_midnight_of_the_site() {
        paper.at("2026-04-01T04:59:59Z").receipt(WASHER, "1", null);
        paper.at("2026-04-01T05:00:00Z").receipt(WASHER, "2", null);
        assertThat(washersIn(MARCH)).startsWith("open 0 recv 1 ");
        assertThat(washersIn(MARCH.plusMonths(1))).startsWith("open 1 recv 2 ");
    }

    @Test
    void a_late_fact_counts_in_the_month_in_which_it_is_booked() {
        paper.at("2026-03-05T12:00:00Z").receipt(WASHER, "4", null);
        Move late = paper.ledger().moves().get(0);
        Goods march = new Goods(MARCH);
        march.add(late, MARCH.plusMonths(1));
        assertThat(inWords(march.rows(List.of(WASHER)).get(0))).startsWith("open 0 recv 0");
        Goods april = new Goods(MARCH.plusMonths(1));
        april.add(late, MARCH.plusMonths(1));
        assertThat(inWords(april.rows(List.of(WASHER)).get(0))).startsWith("open 0 recv 4");
    }

    @Test
    void late_paper_before_a_count_changes_the_open_month_and_not_the_sealed_one() {
        paper.at("2026-03-09T12:00:00Z").countPart(WASHER, "5");
        List<Move> known = countMoves();
        paper.at("2026-03-05T12:00:00Z").receipt(WASHER, "4", null);
        Goods april = new Goods(MARCH.plusMonths(1));
        known.forEach(april::addBefore);
        paper.ledger().moves().forEach(april::addUntil);
        countMoves().forEach(april::addUntil);
        assertThat(inWords(april.rows(List.of(WASHER)).get(0)))
                .startsWith("open 5 recv 4 ")
                .contains("count -4 close 5 ");
    }

    private List<Move> countMoves() {
        return StoreTimeline.of(WASHER, paper.ledger().moves(), paper.counts).countMoves();
    }

    @Test
    void a_row_that_does_not_balance_fails_loudly_with_part_and_numbers() {
        Quantity zero = Quantity.ZERO;
        GoodsRow row =
                new GoodsRow(
                        WASHER,
                        Quantity.of(4),
                        zero,
                        zero,
                        zero,
                        Quantity.of(1),
                        zero,
                        zero,
                        zero,
                        zero,
                        Quantity.of("3.001"),
                        null,
                        null);
        assertThatThrownBy(() -> row.balanced(MARCH))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("QM-4473")
                .hasMessageContaining("make 3,")
                .hasMessageContaining("3.001");
    }

    @Test
    void a_part_that_never_moved_has_a_row_of_zeros() {
        assertThat(washersIn(MARCH)).startsWith("open 0 recv 0").contains("close 0");
    }
}
