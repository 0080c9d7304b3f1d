package counterbench.month;

import counterbench.shared.Quantity;
import counterbench.stock.Account;
import counterbench.stock.Count;
import counterbench.stock.Move;
import java.time.YearMonth;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The goods table of a month, accumulated move by move in any order.
 *
 * <p>Where all facts are booked in the month in which they happened, {@link #add} is all that is
 * needed. Where paper came after its month was sealed, the moves that are derived from the facts
 * (the rest of a measured part, count differences) change with it, though the sealed month must
 * not: derive the moves twice, from the facts booked before the month ({@link #addBefore}) and from
 * those booked up to its end ({@link #addUntil}); the month is the difference of the two.
 */
public final class Goods {
    private static final Comparator<Count> BY_TIME =
            Comparator.comparing(Count::countedAt).thenComparing(Count::address);

    private final YearMonth month;
    private final Map<String, Sums> before = new HashMap<>();
    private final Map<String, Sums> until = new HashMap<>();
    private final Map<String, Count> lastCounts = new HashMap<>();

    public Goods(YearMonth month) {
        this.month = month;
    }

    /** Adds a move that is booked in that month; later ones than the table's do not matter. */
    public void add(Move move, YearMonth booked) {
        if (booked.isBefore(month)) {
            addBefore(move);
        }
        if (!booked.isAfter(month)) {
            addUntil(move);
        }
    }

    /** Adds a move that follows from the facts booked before the month. */
    public void addBefore(Move move) {
        before.computeIfAbsent(move.part(), p -> new Sums()).add(move);
    }

    /** Adds a move that follows from the facts booked before or in the month. */
    public void addUntil(Move move) {
        until.computeIfAbsent(move.part(), p -> new Sums()).add(move);
    }

    /** Says that a loose part was counted; counts booked in other months do not matter. */
    public void addCount(Count count, YearMonth booked) {
        if (count.part() != null && booked.equals(month)) {
            lastCounts.merge(count.part(), count, Goods::later);
        }
    }

    private static Count later(Count one, Count other) {
        return BY_TIME.compare(one, other) < 0 ? other : one;
    }

    /** Every part number that ever moved, or was counted in the month. */
    public Set<String> parts() {
        Set<String> parts = new TreeSet<>(until.keySet());
        parts.addAll(before.keySet());
        parts.addAll(lastCounts.keySet());
        return parts;
    }

    /**
     * The rows of those parts, by part number.
     *
     * @throws IllegalStateException if a row's opening and movements do not make its closing
     */
    public List<GoodsRow> rows(Collection<String> parts) {
        return parts.stream().distinct().sorted().map(this::row).toList();
    }

    private GoodsRow row(String part) {
        Sums atStart = before.getOrDefault(part, new Sums());
        Sums atEnd = until.getOrDefault(part, new Sums());
        Quantity counted = change(atStart, atEnd, Account.Kind.COUNT).negate();
        return new GoodsRow(
                        part,
                        atStart.stock,
                        change(atStart, atEnd, Account.Kind.SUPPLIER).negate(),
                        atEnd.transferredIn.minus(atStart.transferredIn),
                        atEnd.transferredOut.minus(atStart.transferredOut),
                        change(atStart, atEnd, Account.Kind.VEHICLE),
                        change(atStart, atEnd, Account.Kind.CORE),
                        change(atStart, atEnd, Account.Kind.SCRAP),
                        change(atStart, atEnd, Account.Kind.RETURNED),
                        counted,
                        atEnd.stock,
                        closingCount(part),
                        unexplained(part, counted))
                .balanced(month);
    }

    private static Quantity change(Sums atStart, Sums atEnd, Account.Kind kind) {
        return atEnd.of(kind).minus(atStart.of(kind));
    }

    private @Nullable Quantity closingCount(String part) {
        Count last = lastCounts.get(part);
        return last == null ? null : last.quantity();
    }

    private @Nullable Quantity unexplained(String part, Quantity counted) {
        return lastCounts.containsKey(part) || !counted.isZero() ? counted : null;
    }

    /** What all accounts of each kind hold of one part, and how it went through transit. */
    private static final class Sums {
        private final Map<Account.Kind, Quantity> byKind = new EnumMap<>(Account.Kind.class);
        private Quantity stock = Quantity.ZERO;
        private Quantity transferredIn = Quantity.ZERO;
        private Quantity transferredOut = Quantity.ZERO;

        void add(Move move) {
            change(move.from(), move.quantity().negate());
            change(move.to(), move.quantity());
            if (move.from().kind() == Account.Kind.TRANSIT) {
                transferredIn = transferredIn.plus(move.quantity());
            }
            if (move.to().kind() == Account.Kind.TRANSIT) {
                transferredOut = transferredOut.plus(move.quantity());
            }
        }

        private void change(Account account, Quantity quantity) {
            if (account.isStock()) {
                stock = stock.plus(quantity);
            }
            byKind.merge(account.kind(), quantity, Quantity::plus);
        }

        Quantity of(Account.Kind kind) {
            return byKind.getOrDefault(kind, Quantity.ZERO);
        }
    }
}
