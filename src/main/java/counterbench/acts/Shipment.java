package counterbench.acts;

import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.units.Weight;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What was written down of a shipment.
 *
 * @param weight what it weighs as a whole, where somebody said so
 * @param by who opened it
 */
public record Shipment(
        String shipment,
        String carrier,
        String tracking,
        @Nullable Weight weight,
        @Nullable String by) {
    public Shipment {
        Objects.requireNonNull(shipment, "shipment");
        Objects.requireNonNull(carrier, "carrier");
        Objects.requireNonNull(tracking, "tracking");
    }

    /** The row that says so. */
    public FactRow row() {
        return FactRow.of(FactKind.SHIPMENTS)
                .with("shipment", shipment)
                .with("carrier", carrier)
                .with("tracking", tracking)
                .with("weight", weight == null ? null : weight.amount())
                .with("weight_unit", weight == null ? null : weight.unit().symbol())
                .with("by", by);
    }

    /** The same, with what it weighs as a whole. */
    public Shipment weighing(Weight whole) {
        return new Shipment(shipment, carrier, tracking, whole, by);
    }

    /** What it weighs as a whole, where somebody said so. */
    public Optional<Weight> whole() {
        return Optional.ofNullable(weight);
    }

    /** As its row says, where several bear its name, those put together. */
    public static Shipment of(FactRow row) {
        return new Shipment(
                Objects.requireNonNull(row.text("shipment")),
                Objects.requireNonNull(row.text("carrier")),
                Objects.requireNonNull(row.text("tracking")),
                Weight.of(row.decimal("weight"), row.text("weight_unit")).orElse(null),
                row.text("by"));
    }
}
