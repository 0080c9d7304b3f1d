package counterbench.labels.gs1;

import static counterbench.shared.packed.PackedTable.cell;

import counterbench.shared.packed.PackedTable;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Every application identifier that can be read. Those that the program does not know by name are
 * known by their first two digits, which say how long identifier and value are; so a maker's label
 * can be read whatever else is on it.
 */
final class ElementKinds {
    private static final Map<String, ElementKind> KNOWN = known();
    private static final Map<String, Prefix> PREFIXES = prefixes();

    private ElementKinds() {}

    /**
     * What the first two digits say.
     *
     * @param length of the identifier
     * @param whole of identifier and value together, where it is one for ever; else empty
     */
    private record Prefix(int length, Optional<Integer> whole) {}

    /** The identifier that begins at a place in a text; empty if none does. */
    static Optional<ElementKind> at(String text, int from) {
        String firstTwo = text.substring(from, Math.min(text.length(), from + 2));
        return Optional.ofNullable(PREFIXES.get(firstTwo))
                .filter(prefix -> from + prefix.length() <= text.length())
                .flatMap(prefix -> of(text.substring(from, from + prefix.length())));
    }

    /** The identifier of those digits; empty if there is none. */
    static Optional<ElementKind> of(String ai) {
        ElementKind known = KNOWN.get(ai);
        return known != null ? Optional.of(known) : unnamed(ai);
    }

    private static Optional<ElementKind> unnamed(String ai) {
        boolean digits = ai.length() >= 2 && ai.chars().allMatch(c -> c >= '0' && c <= '9');
        return Optional.ofNullable(digits ? PREFIXES.get(ai.substring(0, 2)) : null)
                .filter(prefix -> prefix.length() == ai.length())
                .map(prefix -> unnamed(ai, prefix));
    }

    private static ElementKind unnamed(String ai, Prefix prefix) {
        String value = prefix.whole().map(whole -> "N" + (whole - ai.length())).orElse("X..90");
        return new ElementKind(ai, "", List.of(Component.of(value)), prefix.whole().isEmpty());
    }

    private static Map<String, ElementKind> known() {
        return PackedTable.rows("gs1-ai.csv").stream()
                .map(ElementKinds::kind)
                .collect(Collectors.toUnmodifiableMap(ElementKind::ai, Function.identity()));
    }

    private static ElementKind kind(Map<String, String> row) {
        List<Component> components =
                Arrays.stream(cell(row, "format").split(" ", -1)).map(Component::of).toList();
        return new ElementKind(
                cell(row, "ai"),
                cell(row, "title"),
                components,
                cell(row, "separator").equals("yes"));
    }

    private static Map<String, Prefix> prefixes() {
        return PackedTable.rows("gs1-prefix.csv").stream()
                .collect(
                        Collectors.toUnmodifiableMap(
                                row -> cell(row, "first_two"), ElementKinds::prefix));
    }

    private static Prefix prefix(Map<String, String> row) {
        String whole = cell(row, "whole_length");
        return new Prefix(
                Integer.parseInt(cell(row, "ai_length")),
                whole.isEmpty() ? Optional.empty() : Optional.of(Integer.valueOf(whole)));
    }
}
