package counterbench.journal;

import java.time.YearMonth;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The months of a site that are closed. */
public final class SealedMonths {
    /** No month is. */
    public static final SealedMonths NONE = new SealedMonths(List.of());

    private final SortedMap<YearMonth, Seal> seals = new TreeMap<>();

    public SealedMonths(Collection<Seal> seals) {
        seals.forEach(seal -> this.seals.put(seal.month(), seal));
    }

    /** The seal of a month, if it has one. */
    public Optional<Seal> of(YearMonth month) {
        return Optional.ofNullable(seals.get(month));
    }

    /** The seal of the month before, where the month itself is the first open one after it. */
    public Optional<Seal> before(YearMonth month) {
        return of(month.minusMonths(1));
    }

    /** The last month that is closed. */
    public Optional<Seal> last() {
        return seals.isEmpty() ? Optional.empty() : of(seals.lastKey());
    }

    /** The month in which something of that month is booked now: itself, or the first open one. */
    public YearMonth firstOpen(YearMonth month) {
        return booked(month, Long.MAX_VALUE);
    }

    /** The month in which something of that month is booked that an entry says. */
    public YearMonth booked(YearMonth month, long entry) {
        YearMonth booked = month;
        while (seals.containsKey(booked) && entry > seals.get(booked).entry()) {
            booked = booked.plusMonths(1);
        }
        return booked;
    }
}
