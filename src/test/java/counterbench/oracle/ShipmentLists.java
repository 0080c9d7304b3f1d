package counterbench.oracle;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Which cores are on which shipment, and what the return centre says of them. */
final class ShipmentLists {

    private final World world;
    private final Map<String, List<Core>> onShipment;

    ShipmentLists(World world) {
        this.world = world;
        onShipment =
                world.cores.values().stream()
                        .collect(
                                Collectors.groupingBy(
                                        Core::shipment, LinkedHashMap::new, Collectors.toList()));
    }

    /** Gives every core the answers that name it; a row without core and serial names them all. */
    void acknowledge() {
        for (Facts.Acknowledgement row : world.facts.acknowledgements) {
            Core.Answer answer = new Core.Answer(row.event(), row.at(), row.line());
            named(row).forEach(core -> core.answers.add(answer));
        }
    }

    /** Shipments for which a row names something that is not on them. */
    Set<String> strays() {
        return world.facts.acknowledgements.stream()
                .filter(row -> !row.core().isEmpty() || !row.serial().isEmpty())
                .filter(row -> named(row).isEmpty())
                .map(Facts.Acknowledgement::shipment)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private List<Core> named(Facts.Acknowledgement row) {
        return onShipment.getOrDefault(row.shipment(), List.of()).stream()
                .filter(c -> row.core().isEmpty() || c.tag.equals(row.core()))
                .filter(c -> row.serial().isEmpty() || c.serial.equals(row.serial()))
                .toList();
    }
}
