package counterbench.acts;

import counterbench.acts.UnderWay.Sending;
import counterbench.shared.Quantity;
import counterbench.shared.Site;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A kit, a loose part or a core on its way from one site to another.
 *
 * @param from the site that sent it
 * @param to the site that it was sent to
 * @param kit the kit; null for anything else
 * @param part the loose part; null for anything else
 * @param core the core's tag; null for anything else
 * @param owner the site whose core it is; null for anything else
 */
public record Transit(
        String from,
        String to,
        Instant sentAt,
        @Nullable String kit,
        @Nullable String part,
        @Nullable String core,
        @Nullable String owner,
        Quantity quantity,
        @Nullable String lot) {
    /** The longest on the way first; total. */
    public static final Comparator<Transit> OLDEST_FIRST =
            Comparator.comparing(Transit::sentAt)
                    .thenComparing(Transit::from)
                    .thenComparing(Transit::to)
                    .thenComparing(t -> Objects.toString(t.kit(), ""))
                    .thenComparing(t -> Objects.toString(t.part(), ""))
                    .thenComparing(t -> Objects.toString(t.core(), ""))
                    .thenComparing(t -> Objects.toString(t.owner(), ""))
                    .thenComparing(t -> Objects.toString(t.lot(), ""))
                    .thenComparing(Transit::quantity);

    public Transit {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(sentAt, "sentAt");
        Objects.requireNonNull(quantity, "quantity");
    }

    /** A kit or a loose part on its way to a site. */
    public static Transit of(Site to, Sending sending) {
        return new Transit(
                sending.otherSite(),
                to.site(),
                sending.at(),
                sending.kit(),
                sending.part(),
                null,
                null,
                sending.quantity(),
                sending.lot());
    }

    /** A core that is on the way between two yards. */
    public static Transit of(CoreAway away) {
        return new Transit(
                Objects.requireNonNull(away.where().from(), "on the way"),
                away.where().site(),
                away.where().since(),
                null,
                null,
                away.tag(),
                away.owner().site(),
                Quantity.ONE,
                null);
    }

    /** Whole days of 24 hours since it was sent. */
    public long days(Instant now) {
        return Duration.between(sentAt, now).toDays();
    }

    /** Whether it has been on the way for longer than so many days of 24 hours. */
    public boolean isLongerThan(long days, Instant now) {
        return Duration.between(sentAt, now).compareTo(Duration.ofDays(days)) > 0;
    }

    /** Whether a site sent it, is to get it, or waits for its own core. */
    public boolean concerns(Site site) {
        return to.equals(site.site()) || from.equals(site.site()) || site.site().equals(owner);
    }
}
