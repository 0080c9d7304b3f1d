package counterbench.acts.bench;

import counterbench.acts.JobState;
import counterbench.acts.Named;
import counterbench.acts.Parts;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Quantity;
import counterbench.stock.Use;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * So much of a part in somebody's hands at a job.
 *
 * @param quantity how much; null for one piece, and for nothing that can be measured
 * @param kit the kit that it is from, if it is said
 * @param lot the lot of a loose part, if it is said
 * @param labelLot the lot on its label: of loose parts, that one goes first
 */
public record Hardware(
        String job,
        String part,
        @Nullable Quantity quantity,
        @Nullable String kit,
        @Nullable String lot,
        @Nullable String labelLot) {
    public Hardware {
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(part, "part");
    }

    /** One of it, wherever it is from. */
    public static Hardware of(String job, String part, @Nullable Quantity quantity) {
        return new Hardware(job, part, quantity, null, null, null);
    }

    Named named() {
        return Named.job(job).withKit(kit);
    }

    /** How much is meant, of a part that is known. */
    Quantity amount(Situation situation) {
        Parts parts = Parts.of(situation);
        parts.mustBeLoose(part);
        Quantity amount = Optional.ofNullable(quantity).orElseGet(() -> parts.onePiece(part));
        parts.mustBeSome(part, amount);
        return amount;
    }

    /** The job, where work may be done. */
    Workplace workplace(Situation situation, Stamp stamp, Quantity amount, String verb) {
        JobState state = situation.job(job);
        String asked = verb + " " + Parts.of(situation).words(part, amount) + " on job " + job;
        return Workplace.of(situation, state, stamp, asked);
    }

    /** A row that says what became of so much of it. */
    FactRow row(Stamp stamp, Use.Condition condition, Quantity amount) {
        return stamp.row(FactKind.USES)
                .with("job", job)
                .with("part", part)
                .with("quantity", amount.amount())
                .with("condition", condition.word());
    }
}
