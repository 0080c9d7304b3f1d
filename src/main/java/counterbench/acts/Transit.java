package counterbench.acts;

import counterbench.acts.UnderWay.Sending;
import counterbench.shared.Site;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.Objects;

/**
 * A kit or a loose part on its way from one site to another.
 *
 * @param to the site that it was sent to
 */
public record Transit(Site to, Sending sending) {
    /** The longest on the way first; total. */
    public static final Comparator<Transit> OLDEST_FIRST =
            Comparator.comparing((Transit t) -> t.sending().at())
                    .thenComparing(t -> t.sending().otherSite())
                    .thenComparing(t -> t.to().site())
                    .thenComparing(t -> Objects.toString(t.sending().kit(), ""))
                    .thenComparing(t -> Objects.toString(t.sending().part(), ""))
                    .thenComparing(t -> Objects.toString(t.sending().lot(), ""))
                    .thenComparing(t -> t.sending().quantity());

    public Transit {
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(sending, "sending");
    }

    /** Whole days of 24 hours since it was sent. */
    public long days(Instant now) {
        return Duration.between(sending.at(), now).toDays();
    }

    /** Whether it has been on the way for longer than so many days of 24 hours. */
    public boolean isLongerThan(long days, Instant now) {
        return Duration.between(sending.at(), now).compareTo(Duration.ofDays(days)) > 0;
    }

    /** Whether a site sent it, or is to get it. */
    public boolean concerns(Site site) {
        return to.site().equals(site.site()) || sending.otherSite().equals(site.site());
    }
}
