package counterbench.sheets.report;

import counterbench.shared.NearMatch;
import counterbench.shared.Problem;
import counterbench.shared.Visible;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** One place of a layout's file; whatever is wrong there is added to the file's problems. */
final class LayoutNode {
    private static final int LONGEST = 500;

    private final String file;
    private final Node node;
    private final List<Problem> problems;

    LayoutNode(String file, Node node, List<Problem> problems) {
        this.file = file;
        this.node = node;
        this.problems = problems;
    }

    /** The values of a map with known keys. */
    Map<String, LayoutNode> map(List<String> known) {
        Map<String, LayoutNode> values = new LinkedHashMap<>();
        if (!(node instanceof MappingNode map)) {
            refuse("this", "is not a map", "write keys and values: " + String.join(", ", known));
            return values;
        }
        for (NodeTuple entry : map.getValue()) {
            LayoutNode key = at(entry.getKeyNode());
            String word = key.text("a key");
            if (key.isOneOf("key", word, known)
                    && values.put(word, at(entry.getValueNode())) != null) {
                key.refuse("key " + quoted(word), "is there twice", "remove one of the two");
            }
        }
        return values;
    }

    /** The items of a list; a single value is a list of one. */
    List<LayoutNode> list() {
        List<LayoutNode> items = new ArrayList<>();
        if (node instanceof SequenceNode list) {
            list.getValue().forEach(item -> items.add(at(item)));
        } else {
            items.add(this);
        }
        return items;
    }

    /** The text of a plain value; empty, and a problem, where there is none. */
    String text(String what) {
        String text = node instanceof ScalarNode scalar ? scalar.getValue().strip() : "";
        if (text.isEmpty()) {
            refuse(what, "is empty or no plain text", "write it on this line");
        } else if (text.length() > LONGEST || !Visible.text(text).equals(text)) {
            refuse(what, "is too long or has control characters", "shorten or clean it");
            return "";
        }
        return text;
    }

    /** One of some words; the first, and a problem, where it is none of them. */
    String oneOf(String what, Collection<String> words) {
        return known(what, words).orElseGet(() -> words.stream().findFirst().orElse(""));
    }

    /** One of some words; none, and a problem, where it is none of them. */
    Optional<String> known(String what, Collection<String> words) {
        String text = text(what);
        return isOneOf(what, text, words) ? Optional.of(text) : Optional.empty();
    }

    private boolean isOneOf(String what, String text, Collection<String> words) {
        if (text.isEmpty() || words.contains(text)) {
            return !text.isEmpty();
        }
        String near =
                NearMatch.of(text, words)
                        .map(w -> "did you mean " + w + "?")
                        .orElseGet(() -> "there are " + String.join(", ", words));
        refuse(what + " " + quoted(text), "is not known", near);
        return false;
    }

    void refuse(String what, String because, String todo) {
        int line = node.getStartMark().getLine() + 1;
        int column = node.getStartMark().getColumn() + 1;
        problems.add(new Problem(file + ":" + line + ":" + column + ": " + what, because, todo));
    }

    static String quoted(@Nullable String text) {
        return '"' + String.valueOf(text) + '"';
    }

    private LayoutNode at(Node other) {
        return new LayoutNode(file, other, problems);
    }
}
