package counterbench.cores;

import counterbench.shared.Address;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** One line of the return centre's sheet: what arrived with a shipment, as they name it. */
public record Acknowledgement(
        Address address,
        String shipment,
        Instant at,
        CoreEvent.Kind event,
        @Nullable String core,
        @Nullable String serial,
        @Nullable String reason) {
    public Acknowledgement {
        Objects.requireNonNull(shipment, "shipment");
        Objects.requireNonNull(at, "at");
        if (!event.acknowledges()) {
            throw new IllegalArgumentException(event.word() + " is no acknowledgement");
        }
    }
}
