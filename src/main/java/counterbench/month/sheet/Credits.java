package counterbench.month.sheet;

import counterbench.claims.Credit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Predicate;

/** Sums over lines of remittances. */
final class Credits {
    private Credits() {}

    /** What the lines that are meant come to; nothing where there is none. */
    static Optional<BigDecimal> sum(Collection<Credit> credits, Predicate<Credit> meant) {
        return credits.stream().filter(meant).map(Credit::amount).reduce(BigDecimal::add);
    }

    /** The last day on which one of them was paid. */
    static Optional<LocalDate> lastDay(Collection<Credit> credits) {
        return credits.stream().map(Credit::paidOn).max(Comparator.naturalOrder());
    }
}
