package counterbench.campaign.yaml;

import counterbench.campaign.Condition;
import counterbench.shared.NearMatch;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads {@code attributes}, and each {@code when} against what they declare. */
final class ConditionReader {
    private static final String OUTCOME = "outcome";
    private static final List<String> OUTCOMES = List.of("completed", "not-needed", "abandoned");
    private static final Set<String> COLUMNS = Set.of("campaign", "vin", "model", "site", "ref");

    private final SortedMap<String, List<String>> attributes = new TreeMap<>();

    ConditionReader(Optional<Value> attributes) {
        attributes
                .flatMap(value -> value.freeFields("attributes"))
                .map(Fields::all)
                .orElse(List.of())
                .forEach(this::declare);
    }

    SortedMap<String, List<String>> attributes() {
        return attributes;
    }

    private void declare(Value attribute) {
        String name = attribute.name();
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.equals(OUTCOME)) {
            attribute.refuseName("outcome is the job's, not the vehicle's", "name it otherwise");
        } else if (COLUMNS.contains(lower) || lower.startsWith("x-")) {
            attribute.refuseName(
                    "the sheet of vehicles uses that heading otherwise", "name it otherwise");
        } else if (attributes.keySet().stream().anyMatch(name::equalsIgnoreCase)) {
            attribute.refuseName("another differs from it in letter case only", "keep one");
        }
        attributes.put(name, answers(attribute));
    }

    private static List<String> answers(Value attribute) {
        List<String> answers = attribute.saysSomething() ? attribute.words() : List.of();
        if (new HashSet<>(answers).size() < answers.size()) {
            attribute.refuse("an answer stands in it twice", "keep one");
        }
        return answers;
    }

    /** The condition of a line; without {@code when}, one that always holds. */
    Condition read(Fields line) {
        return read(line, attributes);
    }

    /** Likewise, and it may ask for the outcome of the job. */
    Condition readWithOutcome(Fields line) {
        SortedMap<String, List<String>> all = new TreeMap<>(attributes);
        all.put(OUTCOME, OUTCOMES);
        return read(line, all);
    }

    private static Condition read(Fields line, SortedMap<String, List<String>> known) {
        Map<String, String> wanted = new TreeMap<>();
        Optional<Value> when = line.get("when");
        List<Value> asked =
                when.flatMap(w -> w.freeFields("when")).map(Fields::all).orElse(List.of());
        if (asked.isEmpty()) {
            when.filter(Value::isMap).ifPresent(w -> w.refuse("it asks nothing", "leave it out"));
        }
        for (Value answer : asked) {
            answer(answer, known).ifPresent(text -> wanted.put(answer.name(), text));
        }
        return new Condition(wanted);
    }

    private static Optional<String> answer(Value value, SortedMap<String, List<String>> known) {
        List<String> answers = known.get(value.name());
        if (answers == null) {
            value.refuseName(
                    "attributes does not declare it",
                    NearMatch.of(value.name(), known.keySet())
                            .map(n -> "did you mean " + n + "?")
                            .orElse("declare it and its answers under attributes"));
            return Optional.empty();
        }
        Optional<String> text = value.saysSomething() ? value.word() : Optional.empty();
        text.filter(t -> !answers.isEmpty() && !answers.contains(t))
                .ifPresent(
                        t ->
                                value.refuse(
                                        "attributes does not declare this answer",
                                        "write one of " + String.join(", ", answers)));
        return text;
    }
}
