package counterbench.campaign;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a job may be claimed for.
 *
 * @param operations labour operations, the first whose condition holds counts
 * @param partsAllowancePercent added to the parts' cost
 * @param submitWithinDays days after completion by whose end the claim must be submitted, if
 *     limited
 * @param needs what the job's cores must have reached at submission
 */
public record ClaimTerms(
        List<Operation> operations,
        BigDecimal partsAllowancePercent,
        @Nullable Integer submitWithinDays,
        Needs needs) {
    public ClaimTerms {
        operations = List.copyOf(operations);
        Objects.requireNonNull(partsAllowancePercent, "partsAllowancePercent");
        Objects.requireNonNull(needs, "needs");
    }

    /** Whether an operation is for jobs of that outcome in particular. */
    public boolean payFor(String outcome) {
        return operations.stream().anyMatch(o -> outcome.equals(o.when().answers().get("outcome")));
    }

    /** The last day on which a job that was done on a day may be claimed, if the terms limit it. */
    public Optional<LocalDate> lastDay(LocalDate doneOn) {
        return Optional.ofNullable(submitWithinDays).map(doneOn::plusDays);
    }

    /** A labour operation: its number, hours, and for which vehicles or outcome. */
    public record Operation(String operation, BigDecimal hours, Condition when) {}

    /** What the cores of a job must have reached when its claim is submitted. */
    public enum Needs {
        NONE("none"),
        CORE_SHIPPED("core-shipped"),
        CORE_ACKNOWLEDGED("core-acknowledged");

        private final String word;

        Needs(String word) {
            this.word = word;
        }

        /** The word that packs use. */
        public String word() {
            return word;
        }

        /** All words, the least demanding first. */
        public static List<String> words() {
            return Arrays.stream(values()).map(Needs::word).toList();
        }
    }
}
