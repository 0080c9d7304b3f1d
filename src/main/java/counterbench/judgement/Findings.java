package counterbench.judgement;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What rules write to while they judge one subject: findings, and when the clock changes the
 * outcome.
 */
public final class Findings {
    private final List<Finding> found = new ArrayList<>();
    private @Nullable Instant changesAt;

    /** Adds a finding. */
    public void add(Finding finding) {
        found.add(finding);
    }

    /** Says that at this instant, still to come, the outcome changes though no fact does. */
    public void changesAt(Instant moment) {
        if (changesAt == null || moment.isBefore(changesAt)) {
            changesAt = moment;
        }
    }

    /** What was found, in the order of finding. */
    public List<Finding> found() {
        return List.copyOf(found);
    }

    /** The first moment at which the clock alone can change the outcome, if there is one. */
    public Optional<Instant> changesAt() {
        return Optional.ofNullable(changesAt);
    }
}
