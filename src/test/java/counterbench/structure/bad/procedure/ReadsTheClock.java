package counterbench.structure.bad.procedure;

import java.time.Instant;

/** Bad on purpose: a rule that reads the clock. */
public final class ReadsTheClock {
    public boolean isOver(Instant end) {
        return end.isBefore(Instant.now());
    }
}
