package counterbench.review;

import counterbench.shared.Site;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The moment of a review at a site: what lies after it is left out, and the first such thing is
 * remembered, since the outcome changes when its time comes. Days count from their start.
 */
public final class Horizon {
    private final Site site;
    private final Instant asOf;
    private final LocalDate today;
    private @Nullable Instant next;

    public Horizon(Site site, Instant asOf) {
        this.site = site;
        this.asOf = asOf;
        this.today = site.dayOf(asOf);
    }

    /** The moment itself. */
    public Instant asOf() {
        return asOf;
    }

    /** Whether something that happened at that time counts. */
    public boolean reaches(Instant at) {
        if (!at.isAfter(asOf)) {
            return true;
        }
        remember(at);
        return false;
    }

    /** Whether something of that day counts. */
    public boolean reaches(LocalDate day) {
        if (!day.isAfter(today)) {
            return true;
        }
        remember(site.startOf(day));
        return false;
    }

    private void remember(Instant at) {
        if (next == null || at.isBefore(next)) {
            next = at;
        }
    }

    /** When the first thing happens that was left out since the last asking; forgets it. */
    public Optional<Instant> takeNext() {
        Optional<Instant> taken = Optional.ofNullable(next);
        next = null;
        return taken;
    }
}
