package counterbench.acts.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.acts.Named;
import counterbench.db.TestStores;
import counterbench.review.store.ReviewSite;
import counterbench.review.store.SiteScan;
import counterbench.shell.Larkmere;
import counterbench.stock.Account;
import counterbench.stock.Ledger;
import counterbench.stock.Move;
import counterbench.stock.StoreTimeline;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What an act knows of the store is what a reading of the whole site comes to. */
class ShelfOfPartsTest {
    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void the_shelf_of_a_part_has_every_move_of_the_whole_site(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            List<Move> all = wholeStore(larkmere);
            Set<String> parts = all.stream().map(Move::part).collect(Collectors.toSet());
            assertThat(parts).hasSizeGreaterThan(2);
            assertThat(all).anyMatch(move -> move.from().kind() == Account.Kind.BENCH);
            assertThat(all).anyMatch(move -> move.to().kind() == Account.Kind.BENCH);

            for (String part : new TreeSet<>(parts)) {
                var shelf =
                        new ReadSituation(larkmere.store())
                                .run(
                                        Larkmere.NORTH,
                                        Larkmere.AS_OF,
                                        Named.NOTHING.withParts(Set.of(part)))
                                .shelf(part);

                assertThat(words(shelf.moves()))
                        .as(part)
                        .isEqualTo(words(all.stream().filter(m -> m.part().equals(part)).toList()));
            }
        }
    }

    private static List<Move> wholeStore(Larkmere larkmere) {
        List<Move> moves = new ArrayList<>();
        try (SiteScan scan =
                new SiteScan(larkmere.store(), Larkmere.NORTH, Larkmere.AS_OF, ReviewSite.NEWEST)) {
            scan.all(component -> addStore(Ledger.of(component.facts()), moves));
            addStore(Ledger.of(scan.storeOnly()), moves);
            StoreTimeline.ofAll(List.copyOf(moves), scan.looseCounts())
                    .values()
                    .forEach(timeline -> moves.addAll(timeline.countMoves()));
        }
        return moves;
    }

    private static void addStore(Ledger ledger, List<Move> moves) {
        ledger.moves().stream().filter(m -> m.touches(Account.STORE)).forEach(moves::add);
    }

    private static List<String> words(List<Move> moves) {
        return moves.stream()
                .map(m -> m.at() + " " + m.from() + " " + m.to() + " " + m.source() + m.quantity())
                .sorted()
                .toList();
    }
}
