package counterbench.campaign.yaml;

import counterbench.campaign.ClaimTerms;
import counterbench.campaign.ClaimTerms.Needs;
import counterbench.campaign.ClaimTerms.Operation;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads {@code claim}: what a job may be claimed for. */
final class ClaimReader {
    private static final List<String> SHORT_FORM = List.of("labour-operation", "hours");
    private static final List<String> KEYS =
            List.of(
                    "labour-operation",
                    "hours",
                    "operations",
                    "parts-allowance",
                    "submit-within-days",
                    "needs");
    private static final List<String> OPERATION_KEYS =
            List.of("labour-operation", "hours", "quantity", "when");
    private static final Map<String, Needs> NEEDS =
            Arrays.stream(Needs.values())
                    .collect(Collectors.toUnmodifiableMap(Needs::word, Function.identity()));

    private final ConditionReader conditions;
    private final boolean coreIsDue;

    ClaimReader(ConditionReader conditions, boolean coreIsDue) {
        this.conditions = conditions;
        this.coreIsDue = coreIsDue;
    }

    Optional<ClaimTerms> read(Optional<Value> claim) {
        return claim.flatMap(value -> value.fields("claim", KEYS)).map(this::claim);
    }

    private ClaimTerms claim(Fields fields) {
        return new ClaimTerms(
                operations(fields),
                fields.get("parts-allowance").flatMap(Percent::read).orElse(BigDecimal.ZERO),
                fields.get("submit-within-days").flatMap(v -> v.whole(0)).orElse(null),
                needs(fields));
    }

    private List<Operation> operations(Fields fields) {
        if (!fields.has("operations")) {
            return List.of(operation(fields));
        }
        SHORT_FORM.stream()
                .flatMap(key -> fields.get(key).stream())
                .forEach(v -> v.refuseName("operations says it already", "keep one of the two"));
        return fields.get("operations").map(Value::oneOrMore).orElse(List.of()).stream()
                .flatMap(item -> item.fields("an operation", OPERATION_KEYS).stream())
                .map(this::operation)
                .toList();
    }

    private Operation operation(Fields fields) {
        int times = fields.get("quantity").flatMap(v -> v.whole(1)).orElse(1);
        BigDecimal hours =
                fields.need("hours", "hours: 2.6").flatMap(Value::amount).orElse(BigDecimal.ZERO);
        return new Operation(
                fields.need("labour-operation", "labour-operation: 14-0260")
                        .flatMap(Value::word)
                        .orElse(""),
                hours.multiply(BigDecimal.valueOf(times)),
                conditions.readWithOutcome(fields));
    }

    private Needs needs(Fields fields) {
        Optional<Value> stated = fields.get("needs");
        Needs needs = stated.flatMap(v -> v.choice(NEEDS, Needs.words())).orElse(Needs.NONE);
        if (needs != Needs.NONE && !coreIsDue) {
            stated.get().refuse("no core is due", "add the core's terms, or write none");
        }
        return needs;
    }
}
