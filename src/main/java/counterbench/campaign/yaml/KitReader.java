package counterbench.campaign.yaml;

import counterbench.campaign.KitLine;
import counterbench.campaign.KitTerms;
import counterbench.campaign.PartUnit;
import counterbench.shared.Quantity;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code kit}: kits and their contents. */
final class KitReader {
    private static final List<String> KIT_KEYS = List.of("part", "quantity", "when", "contents");
    private static final List<String> LINE_KEYS =
            List.of(
                    "part",
                    "name",
                    "quantity",
                    "at-least",
                    "single-use",
                    "matched",
                    "shelf-life",
                    "on",
                    "replaces",
                    "value",
                    "when");

    private final ConditionReader conditions;
    private final boolean coreIsDue;
    private final Map<String, Integer> kitLines = new HashMap<>();
    private final Map<String, PartUnit> units = new HashMap<>();

    KitReader(ConditionReader conditions, boolean coreIsDue) {
        this.conditions = conditions;
        this.coreIsDue = coreIsDue;
    }

    List<KitTerms> read(Optional<Value> kit) {
        return kit.map(Value::oneOrMore).orElse(List.of()).stream()
                .flatMap(item -> item.fields("a kit", KIT_KEYS).stream())
                .map(this::kit)
                .toList();
    }

    private KitTerms kit(Fields fields) {
        Optional<Value> part = fields.need("part", "part: QM-4470-K");
        part.ifPresent(this::requireOnce);
        return new KitTerms(
                part.flatMap(Value::word).orElse(""),
                fields.get("quantity").flatMap(v -> v.whole(1)).orElse(1),
                conditions.read(fields),
                fields
                        .need("contents", "contents: [{part: QM-4473, name: Washer, quantity: 4}]")
                        .map(Value::items)
                        .orElse(List.of())
                        .stream()
                        .flatMap(item -> item.fields("a line of contents", LINE_KEYS).stream())
                        .map(this::line)
                        .toList());
    }

    private void requireOnce(Value part) {
        Integer other = kitLines.putIfAbsent(part.word().orElse(""), part.line());
        if (other != null) {
            part.refuse(
                    "another kit has this part number, in line " + other,
                    "state the kit once, with its quantity a job");
        }
    }

    private KitLine line(Fields fields) {
        String part = fields.need("part", "part: QM-4473").flatMap(Value::word).orElse("");
        Optional<Amount> stated = stated(fields);
        stated.ifPresent(s -> requireOneUnit(fields, part, s.unit()));
        Amount quantity = stated.orElse(Amount.ONE);
        return new KitLine(
                part,
                fields.need("name", "name: Seal washer 14 mm").flatMap(Value::text).orElse(""),
                quantity.unit(),
                quantity.quantity(),
                atLeast(fields, stated).orElse(quantity.quantity()),
                flag(fields, "single-use"),
                flag(fields, "matched"),
                flag(fields, "shelf-life"),
                onCore(fields),
                fields.get("replaces").map(v -> replaced(v, part)).orElse(List.of()),
                fields.get("value").flatMap(Value::amount).orElse(BigDecimal.ZERO),
                conditions.read(fields));
    }

    private static Optional<Amount> stated(Fields fields) {
        return fields.need("quantity", "quantity: 4, or quantity: 3.5 mL")
                .flatMap(v -> Amount.read(v, fields.has("at-least")));
    }

    private static Optional<Quantity> atLeast(Fields fields, Optional<Amount> quantity) {
        Optional<Value> value = fields.get("at-least");
        Optional<Amount> least = value.flatMap(v -> Amount.read(v, true));
        if (least.isPresent() && quantity.isPresent()) {
            requireLess(value.get(), least.get(), quantity.get());
        }
        return least.map(Amount::quantity);
    }

    private static void requireLess(Value value, Amount least, Amount quantity) {
        if (least.unit() != quantity.unit()) {
            value.refuse("the quantity is in " + quantity.unit().word(), "use one unit");
        } else if (quantity.quantity().isLessThan(least.quantity())) {
            value.refuse(
                    "it is more than the quantity " + quantity,
                    "state the least that must be fitted");
        }
    }

    private void requireOneUnit(Fields fields, String part, PartUnit unit) {
        PartUnit other = units.putIfAbsent(part, unit);
        if (other != null && other != unit) {
            fields.get("quantity")
                    .ifPresent(
                            v ->
                                    v.refuse(
                                            "another line has part %s in %s"
                                                    .formatted(part, other.word()),
                                            "use one unit for the part"));
        }
    }

    private boolean onCore(Fields fields) {
        Optional<Value> on = fields.get("on");
        boolean onCore =
                on.flatMap(v -> v.choice(Map.of("core", true), List.of("core"))).orElse(false);
        if (onCore && !coreIsDue) {
            on.get().refuse("the pack has no core", "add the core's terms, or leave it out");
        }
        return onCore;
    }

    private static List<String> replaced(Value replaces, String part) {
        List<String> older = replaces.words();
        if (older.contains(part)) {
            replaces.refuse("the part replaces itself", "name the older part numbers only");
        }
        return older;
    }

    private static boolean flag(Fields fields, String key) {
        return fields.get(key).flatMap(Value::flag).orElse(false);
    }

    /** How much of a part, and in what. */
    private record Amount(Quantity quantity, PartUnit unit) {
        static final Amount ONE = new Amount(Quantity.ONE, PartUnit.EACH);
        private static final String EXAMPLE = "write 4, 3.5 mL or 12 g";

        static Optional<Amount> read(Value value, boolean isMeasured) {
            return StatedReader.parts(value)
                    .flatMap(
                            parts ->
                                    unit(value, parts.group(2), isMeasured)
                                            .filter(u -> fits(value, parts.group(1), u))
                                            .map(u -> new Amount(Quantity.of(parts.group(1)), u)));
        }

        private static Optional<PartUnit> unit(Value value, String word, boolean isMeasured) {
            if (word.isEmpty() && isMeasured) {
                value.refuse(
                        "the part is measured, and no unit is said", "write mL or g behind it");
                return Optional.empty();
            }
            return word.isEmpty() ? Optional.of(PartUnit.EACH) : PartUnits.read(value, word);
        }

        private static boolean fits(Value value, String number, PartUnit unit) {
            BigDecimal amount = new BigDecimal(number).stripTrailingZeros();
            if (amount.signum() <= 0) {
                value.refuse("it is not above zero", EXAMPLE);
            } else if (!unit.isMeasured() && amount.scale() > 0) {
                value.refuse(
                        "a counted part has whole pieces, a measured one needs its unit", EXAMPLE);
            } else if (amount.scale() > Quantity.SCALE) {
                value.refuse("it has more than three decimals", "round it to three");
            } else {
                return true;
            }
            return false;
        }

        @Override
        public String toString() {
            return quantity + " " + unit.word();
        }
    }
}
