package counterbench.campaign.yaml;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * Mends texts with a comma in maps in braces. In {@code {name: Seal washer, automatic, quantity:
 * 2}} YAML ends the name at the comma and takes {@code automatic} for a key of which nothing is
 * said. A bare word there that is no key of the map can only be the rest of the text before it.
 */
final class Commas {
    private Commas() {}

    /** The entries of a map, each bare word that is no key joined to the text before it. */
    static List<NodeTuple> joined(MappingNode map, Collection<String> known) {
        if (map.getFlowStyle() != FlowStyle.FLOW) {
            return map.getValue();
        }
        List<NodeTuple> entries = new ArrayList<>();
        for (NodeTuple entry : map.getValue()) {
            Optional<ScalarNode> rest = bareWord(entry, known);
            Optional<NodeTuple> text = last(entries).filter(t -> isPlainText(t));
            if (rest.isPresent() && text.isPresent()) {
                entries.set(entries.size() - 1, join(text.get(), rest.get()));
            } else {
                entries.add(entry);
            }
        }
        return entries;
    }

    private static Optional<NodeTuple> last(List<NodeTuple> entries) {
        return entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(entries.size() - 1));
    }

    private static Optional<ScalarNode> bareWord(NodeTuple entry, Collection<String> known) {
        boolean isBare =
                entry.getKeyNode() instanceof ScalarNode key
                        && key.isPlain()
                        && !known.contains(key.getValue())
                        && entry.getValueNode() instanceof ScalarNode value
                        && value.getValue().isEmpty()
                        && value.getStartMark().getIndex() == key.getEndMark().getIndex();
        return isBare ? Optional.of((ScalarNode) entry.getKeyNode()) : Optional.empty();
    }

    private static boolean isPlainText(NodeTuple entry) {
        return entry.getValueNode() instanceof ScalarNode value
                && value.isPlain()
                && !value.getValue().isEmpty();
    }

    private static NodeTuple join(NodeTuple entry, ScalarNode rest) {
        ScalarNode text = (ScalarNode) entry.getValueNode();
        int spaces = rest.getStartMark().getIndex() - text.getEndMark().getIndex() - 1;
        String joined = text.getValue() + "," + (spaces > 0 ? " " : "") + rest.getValue();
        ScalarNode whole =
                new ScalarNode(
                        Tag.STR, joined, text.getStartMark(), rest.getEndMark(), ScalarStyle.PLAIN);
        return new NodeTuple(entry.getKeyNode(), whole);
    }
}
