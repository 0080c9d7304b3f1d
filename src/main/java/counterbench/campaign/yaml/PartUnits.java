package counterbench.campaign.yaml;

import counterbench.campaign.PartUnit;
import counterbench.shared.Quantity;
import counterbench.shared.units.Unit;
import counterbench.shared.units.Units;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;

/** The units in which parts are kept: each, mL and g. */
final class PartUnits {
    /** What a volume or a weight must be turned into by the person who writes the pack. */
    private static final Map<String, String> KEPT_IN = Map.of("fl oz", "mL", "oz", "g");

    private PartUnits() {}

    /** The unit of a part's quantity; refuses those in which no part is kept. */
    static Optional<PartUnit> read(Value value, String word) {
        Optional<Unit> unit = Units.parse(word);
        String symbol = unit.map(Unit::symbol).orElse(word);
        Optional<PartUnit> known = PartUnit.of(symbol);
        if (known.isEmpty()) {
            value.refuse(
                    "parts are counted, or measured in mL or g",
                    unit.flatMap(u -> converted(value, u)).orElse("write 4, 3.5 mL or 12 g"));
        }
        return known;
    }

    /** The units in which parts are kept are the base units of their measures. */
    private static BigDecimal rounded(BigDecimal inBase) {
        return inBase.setScale(Quantity.SCALE, RoundingMode.HALF_EVEN).stripTrailingZeros();
    }

    private static Optional<String> converted(Value value, Unit unit) {
        return Optional.ofNullable(KEPT_IN.get(unit.symbol()))
                .map(Units::of)
                .flatMap(
                        kept ->
                                StatedReader.parts(value)
                                        .map(parts -> new BigDecimal(parts.group(1)))
                                        .map(number -> rounded(unit.toBase(number)))
                                        .map(
                                                n ->
                                                        "write %s %s"
                                                                .formatted(
                                                                        n.toPlainString(), kept)));
    }
}
