package counterbench.stock;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What became of hardware on a job: a row of {@code uses}.
 *
 * @param kit the kit that the row names, if it names one
 * @param core the core that a plug went on, if the row names one
 * @param was for a part taken off again, whether it had been fitted new or refitted
 */
public record Use(
        Address address,
        String job,
        String part,
        Quantity quantity,
        Condition condition,
        Instant at,
        @Nullable String kit,
        @Nullable String lot,
        @Nullable String core,
        @Nullable Condition was,
        @Nullable String by,
        @Nullable String reason) {
    public Use {
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(quantity, "quantity");
        Objects.requireNonNull(condition, "condition");
        Objects.requireNonNull(at, "at");
    }

    /** The same, on that core. */
    public Use onCore(String tag) {
        return new Use(address, job, part, quantity, condition, at, kit, lot, tag, was, by, reason);
    }

    /** What became of it. */
    public enum Condition {
        NEW("new"),
        REUSED("reused"),
        TAKEN_OFF("taken-off"),
        SCRAPPED("scrapped"),
        PUT_BACK("put-back"),
        ON_CORE("on-core");

        private final String word;

        Condition(String word) {
            this.word = word;
        }

        /** The word that sheets use. */
        public String word() {
            return word;
        }
    }
}
