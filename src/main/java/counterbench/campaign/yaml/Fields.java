package counterbench.campaign.yaml;

import counterbench.shared.NearMatch;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;

/** The keys and values of one map of the file. */
final class Fields {
    private static final List<String> NAMING_KEYS = List.of("id", "part", "labour-operation");

    private final Node node;
    private final String what;
    private final Notes notes;
    private final Map<String, Value> values = new LinkedHashMap<>();

    private Fields(MappingNode node, List<NodeTuple> entries, String what, Notes notes) {
        this.node = node;
        this.what = what;
        this.notes = notes;
        entries.forEach(entry -> add(entry.getKeyNode(), entry.getValueNode()));
    }

    /** Reads a map whose keys are the file's own, such as the names of attributes. */
    static Fields free(MappingNode node, String what, Notes notes) {
        return new Fields(node, node.getValue(), what, notes);
    }

    /** Reads a map of known keys and refuses others, with the one that was probably meant. */
    static Fields of(MappingNode node, String what, Collection<String> known, Notes notes) {
        Fields fields = new Fields(node, Commas.joined(node, known), what, notes);
        fields.values.values().forEach(value -> fields.requireKnown(value, known));
        return fields;
    }

    private void add(Node key, Node value) {
        if (!(key instanceof ScalarNode name)) {
            notes.refuse(key, "a key of " + what, "it is not a plain word", "write a word");
            return;
        }
        Value known = values.get(name.getValue());
        if (known != null) {
            notes.refuse(
                    key,
                    "key " + Value.quoted(name.getValue()),
                    "it stands twice in %s, first in line %d".formatted(what, known.line()),
                    "keep one");
            return;
        }
        values.put(name.getValue(), new Value(name, value, notes));
    }

    private void requireKnown(Value value, Collection<String> known) {
        if (!known.contains(value.name())) {
            String todo =
                    NearMatch.of(value.name(), known)
                            .map(k -> "did you mean " + k + "?")
                            .orElse("its keys are " + String.join(", ", known));
            notes.refuse(
                    value.keyNode(),
                    "key " + Value.quoted(value.name()),
                    what + " has no such key",
                    todo);
        }
    }

    /** Refuses keys that the map knows but that do not go with what it says elsewhere. */
    void refuseOthers(Set<String> fitting, Collection<String> known, String because) {
        values.values().stream()
                .filter(v -> known.contains(v.name()) && !fitting.contains(v.name()))
                .forEach(
                        v ->
                                notes.refuse(
                                        v.keyNode(),
                                        "key " + Value.quoted(v.name()),
                                        because,
                                        "leave it out"));
    }

    Node node() {
        return node;
    }

    boolean has(String key) {
        return values.containsKey(key);
    }

    /** Every value, in the order of the file. */
    List<Value> all() {
        return List.copyOf(values.values());
    }

    /** The value of a key, if it is there and says something. */
    Optional<Value> get(String key) {
        return Optional.ofNullable(values.get(key)).filter(Value::saysSomething);
    }

    /** The value of a key that must be there; the example shows how it is written. */
    Optional<Value> need(String key, String example) {
        if (!has(key)) {
            missing(key, example);
        }
        return get(key);
    }

    private String named() {
        return NAMING_KEYS.stream()
                .flatMap(key -> Optional.ofNullable(values.get(key)).stream())
                .filter(Value::isPlain)
                .findFirst()
                .map(v -> what + ", " + v.shown())
                .orElse(what);
    }

    void missing(String key, String example) {
        notes.refuse(node, named(), "it has no " + key, "add, for example, " + example);
    }
}
