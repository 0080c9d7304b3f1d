package counterbench.month;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.shared.Quantity;
import counterbench.stock.Account;
import counterbench.stock.Ledger;
import counterbench.stock.LedgerFacts;
import counterbench.stock.Move;
import counterbench.stock.RandomPaper;
import counterbench.stock.StoreTimeline;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** What holds of the goods of any sequence of acts; each failure names the seed that wrote it. */
class GoodsPropertyTest {
    private static final YearMonth MARCH = YearMonth.of(2026, 3);
    private static final YearMonth APRIL = YearMonth.of(2026, 4);

    private static List<Move> moves(LedgerFacts facts) {
        List<Move> moves = new ArrayList<>(Ledger.of(facts).moves());
        StoreTimeline.ofAll(List.copyOf(moves), facts.counts())
                .values()
                .forEach(t -> moves.addAll(t.countMoves()));
        return moves;
    }

    private static YearMonth monthOf(Move move) {
        return YearMonth.from(move.at().atZone(ZoneOffset.UTC));
    }

    @Test
    void opening_and_movements_make_the_closing_and_it_opens_the_next_month() {
        LongStream.range(0, 1200)
                .forEach(
                        seed -> {
                            Goods march = new Goods(MARCH);
                            Goods april = new Goods(APRIL);
                            for (Move move : moves(new RandomPaper(seed).facts())) {
                                march.add(move, monthOf(move));
                                april.add(move, monthOf(move));
                            }
                            assertThat(closings(march))
                                    .as("seed %d", seed)
                                    .isEqualTo(openings(april, march.parts()));
                        });
    }

    @Test
    void closings_are_what_kits_store_and_benches_hold() {
        LongStream.range(0, 1200)
                .forEach(
                        seed -> {
                            Goods april = new Goods(APRIL);
                            List<Move> moves = moves(new RandomPaper(seed).facts());
                            moves.forEach(move -> april.add(move, monthOf(move)));
                            for (GoodsRow row : april.rows(april.parts())) {
                                assertThat(row.closingBook())
                                        .as("seed %d, part %s", seed, row.part())
                                        .isEqualTo(stock(moves, row.part()));
                            }
                        });
    }

    @Test
    void moves_booked_late_at_random_still_balance() {
        LongStream.range(0, 1200)
                .forEach(
                        seed -> {
                            Random random = new Random(seed);
                            Goods march = new Goods(MARCH);
                            Goods april = new Goods(APRIL);
                            for (Move move : moves(new RandomPaper(seed).facts())) {
                                YearMonth booked = random.nextInt(5) == 0 ? APRIL : monthOf(move);
                                march.add(move, booked);
                                april.add(move, booked);
                            }
                            assertThat(closings(march))
                                    .as("seed %d", seed)
                                    .isEqualTo(openings(april, march.parts()));
                        });
    }

    private static List<Quantity> closings(Goods goods) {
        return goods.rows(goods.parts()).stream().map(GoodsRow::closingBook).toList();
    }

    private static List<Quantity> openings(Goods goods, Iterable<String> parts) {
        List<String> same = new ArrayList<>();
        parts.forEach(same::add);
        return goods.rows(same).stream().map(GoodsRow::opening).toList();
    }

    private static Quantity stock(List<Move> moves, String part) {
        Quantity sum = Quantity.ZERO;
        for (Move move : moves) {
            if (move.part().equals(part)) {
                sum = sum.plus(share(move.to(), move)).minus(share(move.from(), move));
            }
        }
        return sum;
    }

    private static Quantity share(Account account, Move move) {
        return switch (account.kind()) {
            case KIT, STORE, BENCH -> move.quantity();
            default -> Quantity.ZERO;
        };
    }
}
