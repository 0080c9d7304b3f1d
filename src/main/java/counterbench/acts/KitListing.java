package counterbench.acts;

import counterbench.stock.Kit;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A kit in a list.
 *
 * @param kit as it was received
 * @param where the job that it is issued to, or the site that it was sent to
 */
public record KitListing(Kit kit, KitPlace place, @Nullable String where) {
    /** First to expire first, those that never do last; then by receipt and serial. */
    public static final Comparator<KitListing> FIRST_EXPIRED_FIRST =
            Comparator.comparing(
                            (KitListing listing) -> listing.kit().expiresOn(),
                            Comparator.nullsLast(Comparator.naturalOrder()))
                    .thenComparing(listing -> listing.kit().receivedAt())
                    .thenComparing(KitListing::serial);

    public KitListing {
        Objects.requireNonNull(kit, "kit");
        Objects.requireNonNull(place, "place");
    }

    /** Its serial. */
    public String serial() {
        return kit.kit();
    }

    /** Whether a day is past its last usable one. */
    public boolean isExpired(LocalDate day) {
        return kit.isExpired(day);
    }

    /** Whether it expires before another kit. */
    boolean expiresBefore(Kit other) {
        LocalDate own = kit.expiresOn();
        LocalDate others = other.expiresOn();
        return own != null && (others == null || own.isBefore(others));
    }

    /** Serial and last usable day, as people read them. */
    public String words() {
        LocalDate until = kit.expiresOn();
        return "kit "
                + serial()
                + (until == null ? " (does not expire)" : " (until " + until + ")");
    }
}
