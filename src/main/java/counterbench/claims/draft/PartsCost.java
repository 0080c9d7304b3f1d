package counterbench.claims.draft;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

/**
 * What the parts of a job cost the site.
 *
 * @param amount exact, as far as it is known
 * @param unknown what of it nobody knows, in words
 */
public record PartsCost(BigDecimal amount, List<String> unknown) {
    public PartsCost {
        Objects.requireNonNull(amount, "amount");
        unknown = List.copyOf(unknown);
    }
}
