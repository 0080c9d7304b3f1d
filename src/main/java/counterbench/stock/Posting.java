package counterbench.stock;

import counterbench.shared.Address;
import java.time.Instant;
import java.util.Comparator;

/**
 * One fact that may move goods, in its place in time: by moment, then by phase, then by where it
 * stands in the journal.
 *
 * @param act what it does to the book
 */
record Posting(Instant at, Phase phase, Address fact, Runnable act) implements Comparable<Posting> {
    private static final Comparator<Posting> ORDER =
            Comparator.comparing(Posting::at)
                    .thenComparing(Posting::phase)
                    .thenComparing(Posting::fact);

    @Override
    public int compareTo(Posting other) {
        return ORDER.compare(this, other);
    }

    /**
     * In which order facts of one instant stand. Goods leave the shelf after the uses of that
     * instant, since a kit must be put back before it can be sent; a job's rest is scrapped when
     * all else on its bench is done; counts come last.
     */
    enum Phase {
        RECEIPT,
        ARRIVAL,
        ISSUE,
        USE,
        DEPARTURE,
        END,
        COUNT
    }
}
