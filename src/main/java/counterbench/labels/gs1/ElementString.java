package counterbench.labels.gs1;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a GS1 label says: its elements in their order (GS1 General Specifications, section 7.8).
 *
 * @param elements at least one
 */
public record ElementString(List<Element> elements) {
    /** Stands between a value whose length may differ and what follows (ASCII 29). */
    public static final char SEPARATOR = '\u001d';

    public ElementString {
        elements = List.copyOf(elements);
        if (elements.isEmpty()) {
            throw new IllegalArgumentException("an element string has elements");
        }
    }

    /** What a scanner reads from the symbol, without a prefix that names the kind of symbol. */
    public String scanned() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < elements.size(); i++) {
            Element element = elements.get(i);
            text.append(element.ai()).append(element.value());
            if (element.isSeparated() && i < elements.size() - 1) {
                text.append(SEPARATOR);
            }
        }
        return text.toString();
    }

    /**
     * As people read it: {@code (240)HB-3010-K(21)FP-1001}. A bracket that belongs to a value has a
     * backslash before it.
     */
    public String bracketed() {
        return elements.stream()
                .map(e -> "(" + e.ai() + ")" + e.value().replace("(", "\\("))
                .collect(Collectors.joining());
    }

    /** The value of an identifier; empty where the label does not bear it. */
    public Optional<String> find(String ai) {
        return elements.stream().filter(e -> e.ai().equals(ai)).map(Element::value).findFirst();
    }
}
