package counterbench.claims;

import counterbench.shared.Address;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One line of a remittance.
 *
 * @param currency what the amount is counted in; the site's currency if not said
 * @param address the first row that says it; null where that does not matter
 * @param matched whether a person or the matching said which claim it belongs to
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
        @Nullable String currency,
        @Nullable Address address,
        boolean matched) {
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
        this(remittance, line, amount, paidOn, claim, vin, core, serial, kind, null, null, false);
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

    /** So much of it as belongs to a claim, whatever it names itself. */
    public Credit matchedTo(String itsClaim, BigDecimal share) {
        return new Credit(
                remittance,
                line,
                share,
                paidOn,
                itsClaim,
                vin,
                core,
                serial,
                kind,
                currency,
                address,
                true);
    }

    /** The name that findings give it: {@code remittance/line}. */
    public String name() {
        return nameOf(remittance, line);
    }

    /** The same of a line that is not read whole. */
    public static String nameOf(String remittance, String line) {
        return remittance + "/" + line;
    }
}
