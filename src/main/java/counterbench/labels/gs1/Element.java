package counterbench.labels.gs1;

import java.util.Optional;

/**
 * One statement of a label: an application identifier and its value.
 *
 * @param ai the identifier, such as {@code 21} for a serial number
 */
public record Element(String ai, String value) {
    /**
     * @throws IllegalArgumentException if there is no such identifier, or the value is none of it
     */
    public Element {
        faultOf(ai, value)
                .ifPresent(
                        fault -> {
                            throw new IllegalArgumentException(fault);
                        });
    }

    /** Why there can be no such element; empty if there can. */
    public static Optional<String> faultOf(String ai, String value) {
        Optional<ElementKind> kind = ElementKinds.of(ai);
        return kind.isEmpty()
                ? Optional.of("(" + ai + ") is no application identifier")
                : kind.get().fault(value).map(fault -> "(" + ai + ") " + value + ": " + fault);
    }

    boolean isSeparated() {
        return ElementKinds.of(ai).orElseThrow().separated();
    }

    /** GS1's name for what it says; empty where the program has none. */
    public String title() {
        return ElementKinds.of(ai).orElseThrow().title();
    }
}
