package counterbench.acts.desk;

import counterbench.claims.Credit;
import counterbench.claims.Money;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A claim with the lines of remittances that pay it, and those that clear the charges of its cores.
 *
 * @param payments by day of payment, core credits apart
 * @param coreCredits by core, then by day of payment
 */
public record ClaimPage(ClaimLine line, List<Credit> payments, List<CoreCredit> coreCredits) {
    public ClaimPage {
        Objects.requireNonNull(line, "line");
        payments = List.copyOf(payments);
        coreCredits = List.copyOf(coreCredits);
    }

    /**
     * A core credit.
     *
     * @param core which core of the claim's job it is for; null where it names the claim alone
     */
    public record CoreCredit(@Nullable String core, Credit credit) {}

    /** What the core credits come to. */
    public BigDecimal cleared() {
        return Money.sum(coreCredits.stream().map(c -> c.credit().amount()).toList());
    }

    /** Whether just so much is open of the claim as its core credits came to. */
    public boolean lacksWhatCoreCreditsBrought() {
        return !payments.isEmpty()
                && cleared().signum() != 0
                && line.standing().open().filter(o -> o.compareTo(cleared()) == 0).isPresent();
    }
}
