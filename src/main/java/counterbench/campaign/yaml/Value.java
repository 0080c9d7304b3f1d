package counterbench.campaign.yaml;

import counterbench.shared.NearMatch;
import counterbench.shared.Visible;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * One value of the file with the key that it stands under. Each way of reading it records a problem
 * and gives nothing where the value is of another kind.
 */
final class Value {
    private static final int LONGEST_WORD = 100;
    private static final int LONGEST_TEXT = 1000;
    private static final int LONGEST_QUOTE = 60;
    private static final Pattern DECIMAL = Pattern.compile("[+-]?\\d{1,9}(\\.\\d{1,9})?");
    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,9}");
    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final Map<String, Boolean> FLAGS =
            Map.of("true", true, "yes", true, "false", false, "no", false);

    private final ScalarNode key;
    private final Node node;
    private final Notes notes;

    Value(ScalarNode key, Node node, Notes notes) {
        this.key = key;
        this.node = node;
        this.notes = notes;
    }

    String name() {
        return key.getValue();
    }

    Node keyNode() {
        return key;
    }

    Node node() {
        return node;
    }

    int line() {
        return Notes.lineOf(key);
    }

    static String quoted(String text) {
        String shown =
                text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "…";
        return "\"" + Visible.text(shown).replace("\n", "\\n") + "\"";
    }

    void refuse(String why, String todo) {
        notes.refuse(node, shown(), why, todo);
    }

    /** Refuses the key rather than what stands under it. */
    void refuseName(String why, String todo) {
        notes.refuse(key, "key " + quoted(name()), why, todo);
    }

    boolean isPlain() {
        return node instanceof ScalarNode;
    }

    boolean isMap() {
        return node instanceof MappingNode;
    }

    void warn(String why, String todo) {
        notes.warn(node, shown(), why, todo);
    }

    String shown() {
        return node instanceof ScalarNode scalar
                ? name() + " " + quoted(scalar.getValue())
                : name();
    }

    boolean saysSomething() {
        if (!Tag.NULL.equals(node.getTag())) {
            return true;
        }
        notes.refuse(node, name(), "nothing is said for it", "write a value, or leave it out");
        return false;
    }

    /** Prose: one or more lines. */
    Optional<String> text() {
        return text(LONGEST_TEXT);
    }

    /** A name, number or word that other lines or files may refer to: one line. */
    Optional<String> word() {
        return text(LONGEST_WORD).filter(this::isOneLine);
    }

    private boolean isOneLine(String text) {
        boolean oneLine = text.indexOf('\n') < 0;
        if (!oneLine) {
            refuse("it has more than one line", "write it on one line");
        }
        return oneLine;
    }

    private Optional<String> text(int longest) {
        Optional<String> text = scalar("a text");
        String said = text.orElse("-");
        if (said.isEmpty()) {
            refuse("it is empty", "write a text");
        } else if (!Visible.text(said).equals(said)) {
            refuse("it has a control character", "take it out");
        } else if (said.length() > longest) {
            refuse("it is longer than " + longest + " characters", "shorten it");
        } else {
            return text;
        }
        return Optional.empty();
    }

    /** A whole number, no less than the least. */
    Optional<Integer> whole(int least) {
        String wanted = "write a whole number, " + least + " or more";
        return scalar("a number")
                .filter(t -> matches(WHOLE, t, "it is not a whole number", wanted))
                .map(Integer::valueOf)
                .filter(n -> holds(n >= least, "it is less than " + least, wanted));
    }

    /** A plain decimal, not below zero. */
    Optional<BigDecimal> amount() {
        return decimal().filter(n -> holds(n.signum() >= 0, "it is negative", "write 0 or more"));
    }

    /** A plain decimal above zero. */
    Optional<BigDecimal> positive() {
        return decimal()
                .filter(n -> holds(n.signum() > 0, "it is not above zero", "write more than 0"));
    }

    private Optional<BigDecimal> decimal() {
        String wanted = "write a plain number, with a point before its decimals, such as 2.5";
        return scalar("a number")
                .filter(t -> matches(DECIMAL, t, "it is not a plain number", wanted))
                .map(BigDecimal::new);
    }

    /** Yes or no. */
    Optional<Boolean> flag() {
        return choice(FLAGS, List.of("true", "false"));
    }

    /** A day, as ISO 8601 writes it. */
    Optional<LocalDate> day() {
        String wanted = "write year, month and day, such as 2026-02-02";
        return scalar("a date")
                .filter(t -> matches(DAY, t, "it is not a date", wanted))
                .flatMap(t -> calendarDay(t, wanted));
    }

    private Optional<LocalDate> calendarDay(String text, String wanted) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException e) {
            refuse("there is no such day", wanted);
            return Optional.empty();
        }
    }

    /** One of some words. */
    <T> Optional<T> choice(Map<String, T> meanings, Collection<String> shown) {
        Optional<String> word = scalar("a word");
        Optional<T> meaning = word.flatMap(w -> Optional.ofNullable(meanings.get(w)));
        if (word.isPresent() && meaning.isEmpty()) {
            String all =
                    (shown.size() == 1 ? "write " : "write one of ") + String.join(", ", shown);
            Optional<String> near = NearMatch.of(word.get(), shown);
            refuse("there is no such choice", near.map(n -> "did you mean " + n + "?").orElse(all));
        }
        return meaning;
    }

    /** The text of a plain value, without the spaces around it. */
    Optional<String> scalar(String wanted) {
        if (node instanceof ScalarNode scalar) {
            return Optional.of(scalar.getValue().strip());
        }
        refuse("it is a %s, not %s".formatted(kind(), wanted), "write " + wanted);
        return Optional.empty();
    }

    private String kind() {
        return node instanceof SequenceNode ? "list" : "map";
    }

    /** The items of a list that has at least one. */
    List<Value> items() {
        if (!(node instanceof SequenceNode list)) {
            String is =
                    node instanceof MappingNode ? "it is a map, not a list" : "it is not a list";
            refuse(is, "write a list: " + listOf());
            return List.of();
        }
        if (list.getValue().isEmpty()) {
            refuse("the list is empty", "write what belongs in it, or leave it out");
        }
        return list.getValue().stream()
                .map(item -> new Value(key, item, notes))
                .filter(Value::saysSomething)
                .toList();
    }

    private String listOf() {
        return node instanceof ScalarNode scalar
                ? "[" + quoted(scalar.getValue()) + "]"
                : "a line that begins with - for each";
    }

    /** The words of a list. */
    List<String> words() {
        return items().stream().flatMap(item -> item.word().stream()).toList();
    }

    /** The items of a list of maps, or the map itself where one alone stands in its place. */
    List<Value> oneOrMore() {
        if (isPlain()) {
            refuse("it is neither a map nor a list of maps", "write keys and values: {key: value}");
            return List.of();
        }
        return isMap() ? List.of(this) : items();
    }

    /** The map that this value is, with known keys. */
    Optional<Fields> fields(String what, Collection<String> known) {
        return mapping().map(map -> Fields.of(map, what, known, notes));
    }

    /** The map that this value is, with keys of the file's own. */
    Optional<Fields> freeFields(String what) {
        return mapping().map(map -> Fields.free(map, what, notes));
    }

    private Optional<MappingNode> mapping() {
        if (node instanceof MappingNode map) {
            return Optional.of(map);
        }
        refuse("it is not a map", "write keys and values: {key: value}");
        return Optional.empty();
    }

    private boolean matches(Pattern pattern, String text, String why, String todo) {
        return holds(pattern.matcher(text).matches(), why, todo);
    }

    private boolean holds(boolean good, String why, String todo) {
        if (!good) {
            refuse(why, todo);
        }
        return good;
    }
}
