package counterbench.cores;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The shipment that a core is on: the one to which it was last added and not taken off. A core that
 * was shipped without having been added is on the shipment that its shipped row names.
 *
 * @param shipment the shipment
 * @param since when it came onto it
 */
public record Placement(String shipment, Instant since) {
    /** Where a core's facts, which stand in {@link CoreEvent#ORDER}, leave it. */
    static @Nullable Placement of(List<CoreEvent> ordered) {
        @Nullable Placement on = null;
        for (CoreEvent event : ordered) {
            on = after(event, on);
        }
        return on;
    }

    private static @Nullable Placement after(CoreEvent event, @Nullable Placement on) {
        return switch (event.kind()) {
            case ADDED -> at(event);
            case SHIPPED -> on == null ? at(event) : on;
            case TAKEN_OFF -> on == null || on.isLeftBy(event) ? null : on;
            default -> on;
        };
    }

    private static @Nullable Placement at(CoreEvent event) {
        String shipment = event.shipment();
        return shipment == null ? null : new Placement(shipment, event.at());
    }

    private boolean isLeftBy(CoreEvent takenOff) {
        return takenOff.shipment() == null || shipment.equals(takenOff.shipment());
    }
}
