package counterbench.claims;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One line of a remittance.
 *
 * @param currency what the amount is counted in; the site's currency if not said
 */
public record Credit(
        String remittance,
        String line,
        BigDecimal amount,
        LocalDate paidOn,
        @Nullable String claim,
        @Nullable String vin,
        @Nullable String core,
        @Nullable String serial,
        Kind kind,
        @Nullable String currency) {
    public Credit {
        Objects.requireNonNull(remittance, "remittance");
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(amount, "amount");
        Objects.requireNonNull(paidOn, "paidOn");
        Objects.requireNonNull(kind, "kind");
    }

    /** One in the site's currency. */
    public Credit(
            String remittance,
            String line,
            BigDecimal amount,
            LocalDate paidOn,
            @Nullable String claim,
            @Nullable String vin,
            @Nullable String core,
            @Nullable String serial,
            Kind kind) {
        this(remittance, line, amount, paidOn, claim, vin, core, serial, kind, null);
    }

    /** What a credit pays. */
    public enum Kind {
        CLAIM("claim"),
        CORE("core"),
        REVERSAL("reversal");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word that sheets use. */
        public String word() {
            return word;
        }
    }

    /** The name that findings give it: {@code remittance/line}. */
    public String name() {
        return remittance + "/" + line;
    }
}
