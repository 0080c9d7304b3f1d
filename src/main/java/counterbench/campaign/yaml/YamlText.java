package counterbench.campaign.yaml;

import java.io.StringReader;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.reader.ReaderException;

/**
 * Takes YAML apart into nodes that know their place. Nothing of the file is ever made into an
 * object, and size, depth and repetition are bounded.
 */
final class YamlText {
    private static final int MOST_CHARACTERS = 1_000_000;
    private static final int DEEPEST = 20;
    private static final int MOST_ALIASES = 50;
    private static final String MEND = "mend the YAML here; a text with : or # goes in quotes";

    private static final String TOO_MUCH =
            "it has more than %d characters, %d levels or %d repetitions by *name"
                    .formatted(MOST_CHARACTERS, DEEPEST, MOST_ALIASES);

    private YamlText() {}

    /** The root of the file's one document; a problem, and nothing, where there is none. */
    static Optional<Node> read(String text, Notes notes) {
        if (text.length() > MOST_CHARACTERS) {
            notes.refuse(1, 1, "the file", TOO_MUCH, "write it smaller and plainer");
            return Optional.empty();
        }
        try {
            Optional<Node> root = compose(text);
            if (root.isEmpty()) {
                notes.refuse(1, 1, "the file", "nothing is in it", "write a campaign's terms");
            }
            return root;
        } catch (MarkedYAMLException e) {
            refuse(e, notes);
        } catch (ReaderException e) {
            refuse(e, text, notes);
        } catch (YAMLException e) {
            notes.refuse(1, 1, "the file", TOO_MUCH, "write it smaller and plainer");
        }
        return Optional.empty();
    }

    private static Optional<Node> compose(String text) {
        LoaderOptions options = new LoaderOptions();
        options.setNestingDepthLimit(DEEPEST);
        options.setMaxAliasesForCollections(MOST_ALIASES);
        @Nullable Node root = new Yaml(options).compose(new StringReader(text));
        return Optional.ofNullable(root);
    }

    private static void refuse(MarkedYAMLException e, Notes notes) {
        @Nullable Mark mark = e.getProblemMark();
        int line = mark == null ? 1 : mark.getLine() + 1;
        int column = mark == null ? 1 : mark.getColumn() + 1;
        String problem = String.valueOf(e.getProblem());
        if (problem.endsWith("found another document")) {
            notes.refuse(line, column, "the file", "a second pack begins here", "one pack a file");
        } else {
            notes.refuse(line, column, "the file", problem, MEND);
        }
    }

    private static void refuse(ReaderException e, String text, Notes notes) {
        int at = Math.min(text.offsetByCodePoints(0, clamp(e.getPosition(), text)), text.length());
        String before = text.substring(0, at);
        int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
        int column = at - before.lastIndexOf('\n');
        notes.refuse(line, column, "the file", "a control character stands here", "take it out");
    }

    private static int clamp(int position, String text) {
        return Math.max(0, Math.min(position, text.codePointCount(0, text.length())));
    }
}
