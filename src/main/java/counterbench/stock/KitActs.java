package counterbench.stock;

import counterbench.shared.Quantity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What acts on kits as such do to the book: they come, are issued, leave, and are counted. */
final class KitActs {
    private final Book book;
    private final KitShelf shelf;
    private final Map<String, SortedMap<String, Quantity>> arriving = new HashMap<>();
    private final Map<String, String> lastJob = new HashMap<>();
    private final List<CountDifference> differences = new ArrayList<>();

    KitActs(Book book, KitShelf shelf, List<ReceivedKit> arriving) {
        this.book = book;
        this.shelf = shelf;
        arriving.forEach(k -> this.arriving.put(k.kit().kit(), k.contents()));
    }

    /** Kit counts that differed from the book. */
    List<CountDifference> differences() {
        return differences;
    }

    void receive(ReceivedKit received, Book.Pen pen) {
        String kit = received.kit().kit();
        shelf.came(kit, received.contents());
        fill(kit, Account.SUPPLIER, received.contents(), pen);
    }

    void issue(String kit, String job, Book.Pen pen) {
        lastJob.put(kit, job);
        leave(kit, Account.bench(job), pen);
    }

    void leave(String kit, Account to, Book.Pen pen) {
        shelf.leaves(kit);
        pen.empty(Account.kit(kit), to);
    }

    /** One part of a kit leaves; all of it where no quantity is said. */
    void leave(String kit, String part, @Nullable Quantity quantity, Account to, Book.Pen pen) {
        Account box = Account.kit(kit);
        Quantity all = quantity == null ? book.held(box, part) : quantity;
        pen.move(box, to, part, Source.kit(kit), all);
    }

    /**
     * A kit arrives: with all of it that is on the way between the two sites, or, where this site
     * did not send it, with what it holds by its contents.
     */
    void arrive(String kit, Account transit, Book.Pen pen) {
        SortedMap<String, Quantity> contents = underWay(kit, transit);
        if (contents.isEmpty()) {
            contents = arriving.getOrDefault(kit, new TreeMap<>());
        }
        shelf.came(kit, contents);
        fill(kit, transit, contents, pen);
    }

    /** One part of a kit arrives; all of it that is under way where no quantity is said. */
    void arrive(String kit, String part, @Nullable Quantity quantity, Account from, Book.Pen pen) {
        shelf.stands(kit);
        Quantity all = quantity == null ? book.held(from, part, Source.kit(kit)) : quantity;
        pen.move(from, Account.kit(kit), part, Source.kit(kit), all);
    }

    /** All of a kit is found to be missing, in its box and on benches. */
    void missing(String kit, Book.Pen pen) {
        leave(kit, Account.SUPPLIER, pen);
        for (Account bench : book.accounts(Account.Kind.BENCH)) {
            for (Book.Holding on : book.holdings(bench)) {
                if (on.source().equals(Source.kit(kit))) {
                    pen.take(bench, Account.SUPPLIER, on.part(), on.source(), on.quantity());
                }
            }
        }
    }

    /**
     * One part of a kit is found to be missing: in its box, then on the benches where it lies; what
     * lies nowhere is missing on the bench of the last job that the kit was issued to, or in its
     * box.
     */
    void missing(String kit, String part, @Nullable Quantity quantity, Book.Pen pen) {
        Quantity want = quantity == null ? lying(kit, part) : quantity;
        Quantity rest = want.minus(gather(kit, part, want, Account.SUPPLIER, pen));
        String job = lastJob.get(kit);
        Account owing = job == null ? Account.kit(kit) : Account.bench(job);
        pen.move(owing, Account.SUPPLIER, part, Source.kit(kit), rest);
    }

    /** Moves at most so much of a kit's part from its box and the benches; says how much. */
    Quantity gather(String kit, String part, Quantity want, Account to, Book.Pen pen) {
        Quantity rest = want;
        for (Account place : places(kit)) {
            if (!place.equals(to)) {
                rest = rest.minus(pen.take(place, to, part, Source.kit(kit), rest));
            }
        }
        return want.minus(rest);
    }

    /** A count of 1 or 0 stores what was counted; see {@link KitShelf#whole}. */
    void count(Count count, Book.Pen pen) {
        String kit = Objects.requireNonNull(count.kit());
        boolean found = count.quantity().isPositive();
        boolean expected = shelf.shouldStand(kit);
        if (found != expected) {
            differences.add(difference(count, kit, expected));
            settle(kit, found, pen);
        }
    }

    private void settle(String kit, boolean found, Book.Pen pen) {
        if (found) {
            shelf.stands(kit);
            fill(kit, Account.COUNT, shelf.whole(kit), pen);
        } else {
            leave(kit, Account.COUNT, pen);
        }
    }

    private static CountDifference difference(Count count, String kit, boolean expected) {
        return new CountDifference(
                Account.kit(kit),
                null,
                count.countedAt(),
                count.address(),
                count.quantity(),
                expected ? Quantity.ONE : Quantity.ZERO);
    }

    private void fill(
            String kit, Account from, SortedMap<String, Quantity> contents, Book.Pen pen) {
        Source source = Source.kit(kit);
        contents.forEach((part, q) -> pen.move(from, Account.kit(kit), part, source, q));
    }

    private SortedMap<String, Quantity> underWay(String kit, Account transit) {
        SortedMap<String, Quantity> underWay = new TreeMap<>();
        for (Book.Holding holding : book.holdings(transit)) {
            if (holding.source().equals(Source.kit(kit)) && holding.quantity().isPositive()) {
                underWay.put(holding.part(), holding.quantity());
            }
        }
        return underWay;
    }

    private Quantity lying(String kit, String part) {
        return places(kit).stream()
                .map(place -> book.held(place, part, Source.kit(kit)))
                .filter(Quantity::isPositive)
                .reduce(Quantity.ZERO, Quantity::plus);
    }

    private List<Account> places(String kit) {
        List<Account> places = new ArrayList<>();
        places.add(Account.kit(kit));
        places.addAll(book.accounts(Account.Kind.BENCH));
        return places;
    }
}
