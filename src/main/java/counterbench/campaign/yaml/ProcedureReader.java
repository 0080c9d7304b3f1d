package counterbench.campaign.yaml;

import counterbench.campaign.Cycles;
import counterbench.campaign.Step;
import counterbench.campaign.StepKind;
import counterbench.shared.NearMatch;
import counterbench.shared.units.Unit;
import counterbench.shared.units.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads {@code procedure}: its steps, and how they refer to each other. */
final class ProcedureReader {
    private static final int MOST_STEPS = 500;

    private final StepReader reader;
    private final List<Line> lines = new ArrayList<>();
    private final Map<String, Line> byId = new LinkedHashMap<>();

    ProcedureReader(ConditionReader conditions) {
        this.reader = new StepReader(conditions);
    }

    List<Step> read(Optional<Value> procedure) {
        List<Value> items = procedure.map(Value::items).orElse(List.of());
        if (items.size() > MOST_STEPS) {
            procedure.get().refuse("it has more than " + MOST_STEPS + " steps", "join some");
            return List.of();
        }
        items.forEach(item -> StepReader.fields(item).ifPresent(this::add));
        lines.forEach(this::requireKnownAfter);
        lines.forEach(this::requireRiseFrom);
        refuseCycles();
        return lines.stream().map(Line::step).toList();
    }

    private void add(Fields fields) {
        Line line = new Line(fields, reader.read(fields));
        lines.add(line);
        fields.get("id").ifPresent(id -> requireOnce(id, byId.putIfAbsent(line.step.id(), line)));
    }

    private static void requireOnce(Value id, @Nullable Line other) {
        if (other != null) {
            id.refuse(
                    "another step has this id, in line " + Notes.lineOf(other.fields.node()),
                    "give each step its own");
        }
    }

    private void requireKnownAfter(Line line) {
        line.step.after().stream()
                .filter(id -> !byId.containsKey(id))
                .forEach(
                        id ->
                                line.refuse(
                                        "after",
                                        "there is no step " + Value.quoted(id),
                                        meant(id)));
    }

    private String meant(String id) {
        return NearMatch.of(id, byId.keySet())
                .map(near -> "did you mean " + near + "?")
                .orElse("name a step of this procedure");
    }

    private void requireRiseFrom(Line line) {
        String id = line.step.riseFrom();
        if (id == null) {
            return;
        }
        Line from = byId.get(id);
        if (from == null) {
            line.refuse("rise-from", "there is no such step", meant(id));
        } else if (id.equals(line.step.id())) {
            line.refuse("rise-from", "the step would rise from itself", "name an earlier reading");
        } else if (from.step.kind() != StepKind.READING) {
            line.refuse("rise-from", "that step is no reading", "name a step of kind reading");
        } else if (!comparesWith(line.step, from.step)) {
            line.refuse(
                    "rise-from",
                    "that step reads %s, this one %s".formatted(from.step.unit(), line.step.unit()),
                    "name a reading of the same kind");
        }
    }

    private static boolean comparesWith(Step step, Step from) {
        Optional<Unit> unit = Optional.ofNullable(step.unit()).flatMap(Units::parse);
        Optional<Unit> other = Optional.ofNullable(from.unit()).flatMap(Units::parse);
        return unit.isEmpty() || other.isEmpty() || unit.get().comparesWith(other.get());
    }

    private void refuseCycles() {
        Map<String, List<String>> after = new LinkedHashMap<>();
        byId.forEach((id, line) -> after.put(id, line.step.after()));
        for (List<String> cycle : Cycles.of(after)) {
            Line line = Objects.requireNonNull(byId.get(cycle.get(0)));
            line.refuse(
                    "after",
                    "these steps wait for each other: " + String.join(" after ", cycle),
                    "take one of them out of an after");
        }
    }

    /** A step and where it stands. */
    private record Line(Fields fields, Step step) {
        void refuse(String key, String why, String todo) {
            fields.get(key).ifPresent(v -> v.refuse(why, todo));
        }
    }
}
