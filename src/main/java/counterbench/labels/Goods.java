package counterbench.labels;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a label says of the goods that it is on; each null where it does not say it.
 *
 * @param gtin GS1's number of the goods, fourteen digits
 * @param part the part number
 * @param lot the batch
 * @param expiresOn the last day on which they may be used
 */
public record Goods(
        @Nullable String gtin,
        @Nullable String part,
        @Nullable String lot,
        @Nullable LocalDate expiresOn) {
    /** A part, and what is known of it. */
    public static Goods of(String part, @Nullable String lot, @Nullable LocalDate expiresOn) {
        return new Goods(null, part, lot, expiresOn);
    }

    /** The part number, where the label says it. */
    public Optional<String> partNumber() {
        return Optional.ofNullable(part);
    }
}
