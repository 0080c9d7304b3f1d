package counterbench.stock;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A kit as it was received.
 *
 * @param kit its serial
 * @param kitPart its part number, by which the packs know its contents
 * @param revision the revision it was packed under, if known
 * @param expiresOn the last usable day of what is in it, if it has one
 * @param missing what it came without
 * @param receiving what the paper says besides
 */
public record Kit(
        Address address,
        String kit,
        String kitPart,
        Instant receivedAt,
        @Nullable String revision,
        @Nullable LocalDate expiresOn,
        @Nullable String lot,
        @Nullable BigDecimal unitCost,
        List<PartQuantity> missing,
        Receiving receiving) {
    /**
     * What the paper of its receipt says besides.
     *
     * @param currency what the cost is counted in; the site's if not said
     * @param document the paper's own number
     * @param by who received it
     */
    public record Receiving(
            @Nullable String currency, @Nullable String document, @Nullable String by) {
        /** Nothing. */
        public static final Receiving NOT_SAID = new Receiving(null, null, null);
    }

    public Kit {
        Objects.requireNonNull(kit, "kit");
        Objects.requireNonNull(kitPart, "kitPart");
        Objects.requireNonNull(receivedAt, "receivedAt");
        missing = List.copyOf(missing);
        Objects.requireNonNull(receiving, "receiving");
    }

    /** One of whose receipt the paper says nothing besides. */
    public Kit(
            Address address,
            String kit,
            String kitPart,
            Instant receivedAt,
            @Nullable String revision,
            @Nullable LocalDate expiresOn,
            @Nullable String lot,
            @Nullable BigDecimal unitCost,
            List<PartQuantity> missing) {
        this(
                address,
                kit,
                kitPart,
                receivedAt,
                revision,
                expiresOn,
                lot,
                unitCost,
                missing,
                Receiving.NOT_SAID);
    }

    /** Whether a day is past its last usable one. */
    public boolean isExpired(LocalDate day) {
        return expiresOn != null && day.isAfter(expiresOn);
    }

    /** How much of a part it came without. */
    public Quantity missingOf(String part) {
        Quantity sum = Quantity.ZERO;
        for (PartQuantity one : missing) {
            if (one.part().equals(part)) {
                sum = sum.plus(one.quantity());
            }
        }
        return sum;
    }
}
