package counterbench.stock;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import java.time.Instant;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Something that happened to a kit or a loose part apart from jobs: a row of {@code moves}.
 *
 * @param kind what happened
 * @param kit the kit concerned, if one is
 * @param part the part concerned; with a kit, only that part of it
 * @param quantity how much of the part
 * @param otherSite the site it was sent to or came from
 * @param by who did it, if the row says so
 */
public record StockEvent(
        Address address,
        Kind kind,
        Instant at,
        @Nullable String kit,
        @Nullable String part,
        @Nullable Quantity quantity,
        @Nullable String lot,
        @Nullable String otherSite,
        @Nullable String by) {
    public StockEvent {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(at, "at");
    }

    /** One of which nobody says who did it. */
    public StockEvent(
            Address address,
            Kind kind,
            Instant at,
            @Nullable String kit,
            @Nullable String part,
            @Nullable Quantity quantity,
            @Nullable String lot,
            @Nullable String otherSite) {
        this(address, kind, at, kit, part, quantity, lot, otherSite, null);
    }

    /** What can happen to goods apart from jobs. */
    public enum Kind {
        /** Sent back to the supplier. */
        RETURNED,
        /** Expired or spoilt on the shelf. */
        SCRAPPED,
        /** Found missing later. */
        SHORT,
        /** Sent to another site. */
        SENT,
        /** Arrived from another site. */
        ARRIVED;

        /** The word that sheets use. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
