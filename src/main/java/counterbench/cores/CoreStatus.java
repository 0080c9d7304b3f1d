package counterbench.cores;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The state of a core and the instant since which it holds.
 *
 * <p>Credited, the return centre's word, shipped, on the way to another site and on a shipment each
 * outrank what went before, whenever they came to be known. Short of these, the latest act on the
 * rack tells: draining since a begin, drained since an end, plugged, packed; when the last plug is
 * taken out again, the core is drained if it ever was, else only removed.
 */
public record CoreStatus(CoreState state, Instant since) {
    public CoreStatus {
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(since, "since");
    }

    /** The state that a history makes; a credit, which only claims know, may be told. */
    public static CoreStatus of(CoreHistory history, @Nullable Instant creditedAt) {
        return Optional.ofNullable(creditedAt)
                .map(at -> new CoreStatus(CoreState.CREDITED, at))
                .or(() -> answered(history))
                .or(() -> status(CoreState.SHIPPED, history.firstShipped()))
                .or(() -> status(CoreState.IN_TRANSIT, Whereabouts.onTheWaySince(history)))
                .or(() -> status(CoreState.ON_SHIPMENT, history.placement().map(Placement::since)))
                .orElseGet(() -> Rack.after(history.events()));
    }

    private static Optional<CoreStatus> status(CoreState state, Optional<Instant> since) {
        return since.map(at -> new CoreStatus(state, at));
    }

    private static Optional<CoreStatus> answered(CoreHistory history) {
        return history.verdict()
                .or(() -> history.answers().stream().findFirst())
                .map(answer -> new CoreStatus(told(answer.kind()), answer.at()));
    }

    private static CoreState told(CoreEvent.Kind kind) {
        return switch (kind) {
            case ACCEPTED -> CoreState.ACCEPTED;
            case REJECTED -> CoreState.REJECTED;
            default -> CoreState.RECEIVED;
        };
    }
}
