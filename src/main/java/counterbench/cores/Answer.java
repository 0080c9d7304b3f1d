package counterbench.cores;

import counterbench.shared.Address;
import java.time.Instant;
import java.util.Comparator;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The return centre's word on one core, from its own sheet or from a core's events.
 *
 * @param kind received, accepted or rejected
 * @param reason why it was rejected, if it says so
 */
public record Answer(Address address, Instant at, CoreEvent.Kind kind, @Nullable String reason) {
    /** By time, then by row. */
    static final Comparator<Answer> ORDER =
            Comparator.comparing(Answer::at).thenComparing(Answer::address);

    public Answer {
        Objects.requireNonNull(address, "address");
        Objects.requireNonNull(at, "at");
        if (!kind.acknowledges()) {
            throw new IllegalArgumentException(kind.word() + " is no acknowledgement");
        }
    }

    static Answer of(Acknowledgement row) {
        return new Answer(row.address(), row.at(), row.event(), row.reason());
    }

    static Answer of(CoreEvent event) {
        return new Answer(event.address(), event.at(), event.kind(), event.reason());
    }

    /** Whether it decides: received only says that the core arrived. */
    public boolean decides() {
        return kind != CoreEvent.Kind.RECEIVED;
    }
}
