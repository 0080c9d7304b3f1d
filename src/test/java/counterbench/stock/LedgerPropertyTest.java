package counterbench.stock;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.shared.Quantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** What holds of any sequence of acts; each failure names the seed that wrote it. */
class LedgerPropertyTest {
    private static final int RUNS = 1000;

    private static LongStream seeds() {
        return LongStream.range(0, RUNS);
    }

    @Test
    void the_order_in_which_facts_are_given_does_not_matter() {
        seeds().forEach(
                        seed -> {
                            RandomPaper paper = new RandomPaper(seed);
                            assertThat(Ledger.of(paper.shuffled()))
                                    .as("seed %d", seed)
                                    .isEqualTo(Ledger.of(paper.facts()));
                        });
    }

    @Test
    void components_one_by_one_give_what_the_whole_site_gives() {
        seeds().forEach(
                        seed -> {
                            LedgerFacts facts = new RandomPaper(seed).facts();
                            Ledger whole = Ledger.of(facts);
                            List<Move> moves = new ArrayList<>();
                            List<CountDifference> differences = new ArrayList<>();
                            for (LedgerFacts component : Components.of(facts)) {
                                Ledger part = Ledger.of(component);
                                moves.addAll(part.moves());
                                differences.addAll(part.differences());
                            }
                            assertThat(sorted(moves))
                                    .as("seed %d", seed)
                                    .isEqualTo(sorted(whole.moves()));
                            assertThat(differences)
                                    .as("seed %d", seed)
                                    .containsExactlyInAnyOrderElementsOf(whole.differences());
                        });
    }

    @Test
    void components_are_more_than_one_somewhere_and_linked_somewhere() {
        assertThat(seeds().mapToObj(s -> Components.of(new RandomPaper(s).facts()).size()))
                .anyMatch(n -> n > 3)
                .anyMatch(n -> n < 3);
    }

    @Test
    void every_part_sums_to_zero_over_all_accounts() {
        seeds().forEach(
                        seed -> {
                            Map<String, Quantity> sums = new HashMap<>();
                            Map<Account, Map<String, Quantity>> balances =
                                    balances(allMoves(new RandomPaper(seed).facts()));
                            balances.values()
                                    .forEach(
                                            b ->
                                                    b.forEach(
                                                            (p, q) ->
                                                                    sums.merge(
                                                                            p, q, Quantity::plus)));
                            assertThat(sums.values())
                                    .as("seed %d", seed)
                                    .allMatch(Quantity::isZero);
                        });
    }

    @Test
    void after_the_last_count_the_store_holds_what_was_counted_and_what_came_since() {
        seeds().forEach(seed -> checkStore(seed, new RandomPaper(seed).facts()));
    }

    private static void checkStore(long seed, LedgerFacts facts) {
        List<Move> all = allMoves(facts);
        Comparator<Count> order =
                Comparator.comparing(Count::countedAt).thenComparing(Count::address);
        facts.counts().stream()
                .filter(c -> "QM-4473".equals(c.part()))
                .max(order)
                .ifPresent(
                        last -> {
                            Quantity since =
                                    all.stream()
                                            .filter(m -> m.part().equals("QM-4473"))
                                            .filter(m -> m.at().isAfter(last.countedAt()))
                                            .map(LedgerPropertyTest::change)
                                            .reduce(Quantity.ZERO, Quantity::plus);
                            assertThat(
                                            balances(all)
                                                    .getOrDefault(Account.STORE, Map.of())
                                                    .getOrDefault("QM-4473", Quantity.ZERO))
                                    .as("seed %d", seed)
                                    .isEqualTo(last.quantity().plus(since));
                        });
    }

    private static Quantity change(Move move) {
        if (move.to().equals(Account.STORE)) {
            return move.quantity();
        }
        return move.from().equals(Account.STORE) ? move.quantity().negate() : Quantity.ZERO;
    }

    private static List<Move> allMoves(LedgerFacts facts) {
        List<Move> all = new ArrayList<>(Ledger.of(facts).moves());
        StoreTimeline.ofAll(List.copyOf(all), facts.counts())
                .values()
                .forEach(timeline -> all.addAll(timeline.countMoves()));
        return all;
    }

    private static Map<Account, Map<String, Quantity>> balances(List<Move> moves) {
        Map<Account, Map<String, Quantity>> balances = new HashMap<>();
        for (Move m : moves) {
            balances.computeIfAbsent(m.to(), a -> new HashMap<>())
                    .merge(m.part(), m.quantity(), Quantity::plus);
            balances.computeIfAbsent(m.from(), a -> new HashMap<>())
                    .merge(m.part(), m.quantity().negate(), Quantity::plus);
        }
        return balances;
    }

    private static List<String> sorted(List<Move> moves) {
        return moves.stream().map(Move::toString).sorted().toList();
    }
}
