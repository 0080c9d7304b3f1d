package counterbench.campaign.yaml;

import counterbench.campaign.Step;
import counterbench.campaign.StepKind;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads one step of {@code procedure}. */
final class StepReader {
    private static final List<String> COMMON = List.of("id", "do", "kind", "after", "when");
    private static final List<String> BOUNDS =
            List.of("unit", "low", "high", "also-low", "also-high");
    private static final List<String> TORQUE = List.of("fasteners", "torque", "within", "also");
    private static final List<String> KEYS =
            Stream.of(COMMON, TORQUE, BOUNDS, List.of("rise-from", "minutes"))
                    .flatMap(List::stream)
                    .toList();
    private static final Map<String, StepKind> KINDS =
            Arrays.stream(StepKind.values())
                    .collect(Collectors.toUnmodifiableMap(StepKind::word, Function.identity()));
    private static final List<String> KIND_WORDS =
            Arrays.stream(StepKind.values()).map(StepKind::word).toList();

    private final ConditionReader conditions;

    StepReader(ConditionReader conditions) {
        this.conditions = conditions;
    }

    /** The keys and values of a step. */
    static Optional<Fields> fields(Value item) {
        return item.fields("a step", KEYS);
    }

    Step read(Fields fields) {
        Optional<StepKind> kind =
                fields.need("kind", "kind: sign").flatMap(v -> v.choice(KINDS, KIND_WORDS));
        kind.ifPresent(k -> refuseKeysOfOtherKinds(fields, k));
        Demand demand = kind.map(k -> demand(fields, k)).orElse(Demand.NONE);
        return new Step(
                fields.need("id", "id: clamp").flatMap(Value::word).orElse(""),
                fields.need("do", "do: Tighten the bolts").flatMap(Value::text).orElse(""),
                kind.orElse(StepKind.SIGN),
                fields.get("after").map(Value::words).orElse(List.of()),
                fields.get("fasteners").flatMap(v -> v.whole(1)).orElse(1),
                demand.unit(),
                demand.target(),
                demand.limits(),
                fields.get("rise-from").flatMap(Value::word).orElse(null),
                fields.get("minutes").flatMap(Value::positive).orElse(null),
                demand.also(),
                conditions.read(fields));
    }

    private static Demand demand(Fields fields, StepKind kind) {
        return switch (kind) {
            case TORQUE -> TorqueReader.read(fields);
            case READING -> ReadingReader.read(fields);
            case WAIT -> {
                if (!fields.has("minutes")) {
                    fields.missing("minutes", "minutes: 5");
                }
                yield Demand.NONE;
            }
            case SAFETY, SIGN -> Demand.NONE;
        };
    }

    private static void refuseKeysOfOtherKinds(Fields fields, StepKind kind) {
        Stream<List<String>> own =
                switch (kind) {
                    case TORQUE -> Stream.of(COMMON, TORQUE, BOUNDS);
                    case READING -> Stream.of(COMMON, BOUNDS, List.of("rise-from"));
                    case WAIT -> Stream.of(COMMON, List.of("minutes"));
                    case SAFETY, SIGN -> Stream.of(COMMON);
                };
        Set<String> fitting = own.flatMap(List::stream).collect(Collectors.toSet());
        fields.refuseOthers(fitting, KEYS, "a step of kind %s has none".formatted(kind.word()));
    }
}
