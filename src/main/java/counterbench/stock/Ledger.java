package counterbench.stock;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import counterbench.stock.Posting.Phase;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * All moves that follow from the facts, in order of time.
 *
 * <p>Kits, benches, vehicles and cores come out the same whether the facts are those of one
 * component or of the whole site. What lies loose in the store needs the whole site: see {@link
 * StoreTimeline}, which takes the moves that touch it and adds the counts of loose parts.
 *
 * <p>Readings of what the facts leave open:
 *
 * <ul>
 *   <li>Issuing a kit moves what it holds at that moment; before it was received, nothing.
 *   <li>A kit counts as issued to a job if any issue says so, before or after the use.
 *   <li>A use that names no kit draws on its one kit, or its lot, then on other sources in order of
 *       arrival, so that the bench as a whole is right.
 *   <li>A kit found by a count comes back with what it held when it last left the shelf whole.
 * </ul>
 *
 * @param moves in order of time, then of the facts
 * @param differences counts of kits that differ from the book
 */
public record Ledger(List<Move> moves, List<CountDifference> differences) {
    public Ledger {
        moves = List.copyOf(moves);
        differences = List.copyOf(differences);
    }

    /** Works through the facts, whatever order they are given in. */
    public static Ledger of(LedgerFacts facts) {
        return new Run(facts).ledger();
    }

    /** What an account holds of each part once all is done, without the zeros. */
    public SortedMap<String, Quantity> balance(Account account) {
        SortedMap<String, Quantity> balance = new TreeMap<>();
        for (Move move : moves) {
            if (move.to().equals(account)) {
                balance.merge(move.part(), move.quantity(), Quantity::plus);
            }
            if (move.from().equals(account)) {
                balance.merge(move.part(), move.quantity().negate(), Quantity::plus);
            }
        }
        balance.values().removeIf(Quantity::isZero);
        return Collections.unmodifiableSortedMap(balance);
    }

    /** One way through the facts. */
    private static final class Run {
        private final Book book = new Book();
        private final KitActs kits;
        private final BenchActs benches;
        private final ShelfActs shelf;
        private final List<Posting> postings = new ArrayList<>();

        Run(LedgerFacts facts) {
            KitShelf standing = new KitShelf(book);
            kits = new KitActs(book, standing, facts.arriving());
            benches = new BenchActs(book, standing, kits, new KitsOfJobs(facts));
            shelf = new ShelfActs(kits);
            gather(facts);
        }

        Ledger ledger() {
            Collections.sort(postings);
            postings.forEach(posting -> posting.act().run());
            return new Ledger(book.moves(), kits.differences());
        }

        private void gather(LedgerFacts facts) {
            for (ReceivedKit k : facts.kits()) {
                post(
                        k.kit().receivedAt(),
                        Phase.RECEIPT,
                        k.kit().address(),
                        p -> kits.receive(k, p));
            }
            for (Receipt r : facts.receipts()) {
                post(r.receivedAt(), Phase.RECEIPT, r.address(), p -> shelf.receive(r, p));
            }
            for (Issue i : facts.issues()) {
                post(i.at(), Phase.ISSUE, i.address(), p -> benches.issue(i, p));
            }
            for (Use u : facts.uses()) {
                post(u.at(), Phase.USE, u.address(), p -> benches.use(u, p));
            }
            for (StockEvent e : facts.events()) {
                post(e.at(), phaseOf(e), e.address(), p -> shelf.event(e, p));
            }
            for (JobEnd e : facts.ends()) {
                post(e.at(), Phase.END, e.address(), p -> benches.end(e, p));
            }
            for (Count c : facts.counts()) {
                if (c.kit() != null) {
                    post(c.countedAt(), Phase.COUNT, c.address(), p -> kits.count(c, p));
                }
            }
        }

        private static Phase phaseOf(StockEvent event) {
            return event.kind() == StockEvent.Kind.ARRIVED ? Phase.ARRIVAL : Phase.DEPARTURE;
        }

        private void post(Instant at, Phase phase, Address fact, Consumer<Book.Pen> act) {
            Book.Pen pen = new Book.Pen(book, at, fact);
            postings.add(new Posting(at, phase, fact, () -> act.accept(pen)));
        }
    }
}
