package counterbench.campaign.yaml;

import counterbench.campaign.Limits;
import counterbench.shared.units.Measure;
import counterbench.shared.units.Unit;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads what a reading step asks: a unit, and between what the value or its rise must lie. */
final class ReadingReader {
    private ReadingReader() {}

    static Demand read(Fields fields) {
        Optional<Unit> said = fields.get("unit").flatMap(v -> StatedReader.unit(v, null));
        if (fields.has("unit") && said.isEmpty()) {
            return Demand.NONE;
        }
        Measure wanted = said.map(Unit::measures).orElse(null);
        boolean isRise = fields.has("rise-from");
        Bounds bounds = new Bounds(fields, said.orElse(null), wanted, isRise);
        Optional<Unit> unit = said.or(bounds::unit);
        if (Stream.of("unit", "low", "high").noneMatch(fields::has)) {
            fields.missing("unit", "unit: rpm");
        }
        if (bounds.low().isPresent() && bounds.high().isPresent()) {
            requireOneMeasure(bounds);
        }
        Limits limits = unit.map(bounds::in).orElse(Demand.NO_LIMITS);
        return new Demand(unit.map(Unit::symbol).orElse(null), null, limits, bounds.also());
    }

    private static void requireOneMeasure(Bounds bounds) {
        Unit low = bounds.low().orElseThrow().unit();
        Unit high = bounds.high().orElseThrow().unit();
        if (!low.comparesWith(high)) {
            bounds.refuse(
                    "high",
                    "%s measures %s, and low is in %s"
                            .formatted(high, high.measures().words(), low),
                    "use units of one kind");
        }
    }
}
