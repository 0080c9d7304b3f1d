package counterbench.campaign.yaml;

import counterbench.campaign.CoreTerms;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Reads {@code core}: what is due back. */
final class CoreReader {
    private static final List<String> KEYS =
            List.of(
                    "part",
                    "quantity",
                    "when",
                    "drain-minutes",
                    "plugs",
                    "packaging",
                    "return-within-days",
                    "charge");

    private final ConditionReader conditions;

    CoreReader(ConditionReader conditions) {
        this.conditions = conditions;
    }

    List<CoreTerms> read(Optional<Value> core) {
        return core.map(Value::oneOrMore).orElse(List.of()).stream()
                .flatMap(item -> item.fields("a core", KEYS).stream())
                .map(this::core)
                .toList();
    }

    private CoreTerms core(Fields fields) {
        return new CoreTerms(
                fields.need("part", "part: QM-4471").flatMap(Value::word).orElse(""),
                fields.get("quantity").flatMap(v -> v.whole(1)).orElse(1),
                conditions.read(fields),
                fields.need("drain-minutes", "drain-minutes: 12")
                        .flatMap(Value::amount)
                        .orElse(BigDecimal.ZERO),
                fields.get("plugs").flatMap(v -> v.whole(0)).orElse(0),
                fields.get("packaging").flatMap(Value::word).orElse(null),
                fields.get("return-within-days").flatMap(v -> v.whole(0)).orElse(null),
                fields.get("charge").flatMap(Value::amount).orElse(BigDecimal.ZERO));
    }
}
