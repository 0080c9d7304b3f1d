package counterbench.claims.draft;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;

/**
 * What an hour of labour costs from a day on.
 *
 * @param amount in the site's currency
 */
public record Rate(BigDecimal amount, LocalDate validFrom) {
    public Rate {
        Objects.requireNonNull(amount, "amount");
        Objects.requireNonNull(validFrom, "validFrom");
    }

    /** The one that holds on a day, if one does. */
    public static Optional<Rate> on(LocalDate day, Collection<Rate> rates) {
        return rates.stream()
                .filter(rate -> !rate.validFrom().isAfter(day))
                .max(Comparator.comparing(Rate::validFrom));
    }
}
