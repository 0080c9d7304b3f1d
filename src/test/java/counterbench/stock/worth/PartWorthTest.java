package counterbench.stock.worth;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import counterbench.stock.Account;
import counterbench.stock.Move;
import counterbench.stock.Source;
import counterbench.stock.StoreMoves;
import counterbench.stock.worth.StoreStanding.Costing;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PartWorthTest {
    private static final YearMonth MARCH = YearMonth.of(2026, 3);

    private final List<Move> moves = new ArrayList<>();
    private final Map<Address, BigDecimal> costs = new HashMap<>();

    private void move(String at, Account from, Account to, long quantity) {
        moves.add(
                new Move(
                        Instant.parse(at),
                        new Address(moves.size() + 1, 1),
                        from,
                        to,
                        "HB-1203",
                        Source.LOOSE,
                        Quantity.of(quantity)));
    }

    private void receipt(String at, long quantity, String cost) {
        move(at, Account.SUPPLIER, Account.STORE, quantity);
        costs.put(moves.get(moves.size() - 1).fact(), new BigDecimal(cost));
    }

    private Map<String, StoreStanding> standing(CostMethod method, YearMonth until) {
        moves.sort(StoreMoves.ORDER);
        return StoreStanding.of(
                moves,
                until,
                new Costing(
                        method,
                        Rounding.EXACT,
                        move -> costs.get(move.fact()),
                        move -> YearMonth.from(move.at().atZone(ZoneOffset.UTC))));
    }

    private List<PartWorth> march(CostMethod method) {
        return PartWorth.between(standing(method, MARCH.minusMonths(1)), standing(method, MARCH));
    }

    @Test
    void a_month_opens_with_what_the_one_before_ended_with() {
        receipt("2026-02-10T10:00:00Z", 10, "2");
        move("2026-02-11T10:00:00Z", Account.STORE, Account.bench("J-1"), 4);
        receipt("2026-03-02T10:00:00Z", 5, "3");
        move("2026-03-05T10:00:00Z", Account.STORE, Account.bench("J-2"), 8);
        move("2026-03-06T10:00:00Z", Account.bench("J-2"), Account.STORE, 1);

        assertThat(march(CostMethod.FIFO))
                .containsExactly(
                        new PartWorth(
                                "HB-1203",
                                Worth.of(Quantity.of(6), new BigDecimal("2")),
                                Worth.of(Quantity.of(5), new BigDecimal("3")),
                                new Worth(Quantity.of(7), new BigDecimal("15.000")),
                                new Worth(Quantity.of(4), new BigDecimal("12.000"))));
    }

    @Test
    void the_average_of_a_month_counts_what_came_after_the_issue_too() {
        receipt("2026-03-02T10:00:00Z", 5, "2");
        move("2026-03-05T10:00:00Z", Account.STORE, Account.bench("J-2"), 5);
        receipt("2026-03-09T10:00:00Z", 5, "4");

        assertThat(march(CostMethod.AVERAGE).get(0).out().value()).isEqualByComparingTo("15");
        assertThat(march(CostMethod.MOVING_AVERAGE).get(0).out().value())
                .isEqualByComparingTo("10");
    }

    @Test
    void an_old_receipt_without_a_cost_does_not_hide_what_comes_in_later() {
        move("2026-01-02T10:00:00Z", Account.SUPPLIER, Account.STORE, 3);
        move("2026-01-03T10:00:00Z", Account.STORE, Account.bench("J-1"), 3);
        receipt("2026-03-02T10:00:00Z", 5, "2");

        PartWorth march = march(CostMethod.LOTS).get(0);

        assertThat(march.isKnown()).isTrue();
        assertThat(march.in()).isEqualTo(Worth.of(Quantity.of(5), new BigDecimal("2")));
    }

    @Test
    void a_part_that_is_neither_there_nor_moves_is_left_out() {
        receipt("2026-01-02T10:00:00Z", 3, "1");
        move("2026-01-03T10:00:00Z", Account.STORE, Account.bench("J-1"), 3);

        assertThat(march(CostMethod.LOTS)).isEmpty();
    }

    /** What a piece is worth lies between the least and the most that any was bought for. */
    @ParameterizedTest
    @EnumSource(CostMethod.class)
    void pieces_are_as_many_as_moved_and_worth_no_less_than_the_cheapest(CostMethod method) {
        for (long seed = 1; seed <= 40; seed++) {
            randomQuarter(new Random(seed));

            PartWorth march = march(method).get(0);

            assertThat(march.out().quantity()).as("seed %s", seed).isEqualTo(issuedInMarch());
            assertThat(march.closing().quantity()).as("seed %s", seed).isEqualTo(inStore());
            assertThat(march.unitCost().orElseThrow())
                    .as("seed %s", seed)
                    .isBetween(new BigDecimal("1.10"), new BigDecimal("1.99"));
        }
    }

    private Quantity issuedInMarch() {
        return moves.stream()
                .filter(move -> !move.at().isBefore(Instant.parse("2026-03-01T00:00:00Z")))
                .filter(move -> !move.from().equals(Account.SUPPLIER))
                .map(PartWorthTest::outOfStore)
                .reduce(Quantity.ZERO, Quantity::plus);
    }

    private Quantity inStore() {
        return moves.stream().map(PartWorthTest::outOfStore).reduce(Quantity.ZERO, Quantity::minus);
    }

    private static Quantity outOfStore(Move move) {
        return move.from().equals(Account.STORE) ? move.quantity() : move.quantity().negate();
    }

    /** Receipts in plenty, issues, and now and then a part of what was issued last put back. */
    private void randomQuarter(Random random) {
        moves.clear();
        costs.clear();
        receipt("2026-01-01T00:00:00Z", 500, "1.25");
        for (int hour = 1; hour < 80; hour++) {
            String at =
                    Instant.parse("2026-01-01T00:00:00Z").plusSeconds(hour * 90_000L).toString();
            Account job = Account.bench("J-" + hour);
            switch (random.nextInt(3)) {
                case 0 -> receipt(at, 1 + random.nextInt(9), "1." + (10 + random.nextInt(90)));
                case 1 -> move(at, Account.STORE, job, 1 + random.nextInt(4));
                default -> {
                    move(at, Account.STORE, job, 3);
                    move(at.replace(":00Z", ":30Z"), job, Account.STORE, 1 + random.nextInt(3));
                }
            }
        }
    }
}
