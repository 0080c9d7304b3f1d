package counterbench.claims.rules;

import counterbench.shared.Site;
import java.math.BigDecimal;

/** Money as messages write it: exact, with at least the digits of the site's currency. */
final class Amounts {
    private Amounts() {}

    static String text(BigDecimal amount, Site site) {
        int digits = Math.max(site.currency().getDefaultFractionDigits(), 0);
        BigDecimal plain = amount.stripTrailingZeros();
        BigDecimal shown = plain.scale() < digits ? plain.setScale(digits) : plain;
        return shown.toPlainString() + " " + site.currency().getCurrencyCode();
    }
}
