package counterbench.claims.draft;

import java.math.BigDecimal;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One line of which a draft is made. The lines of a draft add up to its total.
 *
 * @param what as people say it: {@code kit FP-1053}
 * @param quantity how many or how much; null where nothing is counted
 * @param unitAmount what one comes to; null likewise
 */
public record DraftLine(
        Kind kind,
        String what,
        @Nullable BigDecimal quantity,
        @Nullable BigDecimal unitAmount,
        BigDecimal amount) {
    public DraftLine {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(amount, "amount");
    }

    /** What a line asks money for. */
    public enum Kind {
        LABOUR("labour"),
        PARTS("parts"),
        ALLOWANCE("allowance"),
        CORE_CHARGE("core charge");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** As people read it. */
        public String words() {
            return words;
        }
    }
}
