package counterbench.acts;

import counterbench.cores.CoreEvent;
import counterbench.shared.units.Weight;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One shipment as it stands.
 *
 * @param cores those on it, by tag
 */
public record ShipmentState(Shipment shipment, List<CoreCase> cores) {
    public ShipmentState {
        Objects.requireNonNull(shipment, "shipment");
        cores = List.copyOf(cores);
    }

    static ShipmentState of(Shipment shipment, Collection<CoreCase> known) {
        return new ShipmentState(
                shipment,
                known.stream()
                        .filter(core -> isOn(core, shipment.shipment()))
                        .sorted(Comparator.comparing((CoreCase core) -> core.core().core()))
                        .toList());
    }

    private static boolean isOn(CoreCase core, String shipment) {
        return core.core().placement().filter(on -> on.shipment().equals(shipment)).isPresent();
    }

    /** Its name. */
    public String name() {
        return shipment.shipment();
    }

    /** When it left: when the first of its cores did. */
    public Optional<Instant> shippedAt() {
        return cores.stream()
                .flatMap(core -> core.core().events().stream())
                .filter(event -> event.kind() == CoreEvent.Kind.SHIPPED)
                .filter(event -> event.shipment() == null || event.shipment().equals(name()))
                .map(CoreEvent::at)
                .min(Comparator.naturalOrder());
    }

    /**
     * What it weighs: as somebody said of the whole, else the sum of what is known of its cores.
     */
    public Optional<Weight> weight() {
        return shipment.whole().or(() -> Weight.sum(known()));
    }

    /** How many of its cores are not in its weight. */
    public int notWeighed() {
        return shipment.whole().isPresent() ? 0 : cores.size() - known().size();
    }

    private List<Weight> known() {
        return cores.stream().flatMap(core -> weightOf(core).stream()).toList();
    }

    private static Optional<Weight> weightOf(CoreCase core) {
        return core.core().lastPacked().map(CoreEvent::weight);
    }

    /** The core of that tag, if it is on it. */
    public Optional<CoreCase> find(String tag) {
        return cores.stream().filter(core -> core.core().core().equals(tag)).findFirst();
    }
}
