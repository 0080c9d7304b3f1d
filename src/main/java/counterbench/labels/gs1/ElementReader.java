package counterbench.labels.gs1;

import counterbench.shared.Problem;
import counterbench.shared.Refused;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads element strings: as scanners type them, or as people do, with brackets. */
public final class ElementReader {
    private final String text;
    private final List<Element> elements = new ArrayList<>();
    private int at;

    private ElementReader(String text) {
        this.text = text;
    }

    /**
     * What a scanner read.
     *
     * @param text without the prefix that names the kind of symbol
     * @throws Refused if it is no element string
     */
    public static ElementString scanned(String text) {
        ElementReader reader = new ElementReader(text);
        reader.takeSeparator();
        while (reader.at < text.length()) {
            reader.takeScanned();
        }
        return reader.whole();
    }

    /**
     * What a person typed, such as {@code (01)12345678901231(10)12345}.
     *
     * @throws Refused if it is no element string
     */
    public static ElementString bracketed(String text) {
        ElementReader reader = new ElementReader(text);
        while (reader.at < text.length()) {
            reader.takeBracketed();
        }
        return reader.whole();
    }

    private ElementString whole() {
        if (elements.isEmpty()) {
            throw refused("it is empty");
        }
        return new ElementString(elements);
    }

    private void takeScanned() {
        ElementKind kind =
                ElementKinds.at(text, at)
                        .orElseThrow(
                                () -> refused("no application identifier begins at " + rest()));
        at += kind.ai().length();
        int end =
                kind.separated() ? nextSeparator() : Math.min(nextSeparator(), at + kind.length());
        add(kind.ai(), text.substring(at, end));
        at = end;
        takeSeparator();
    }

    private int nextSeparator() {
        int found = text.indexOf(ElementString.SEPARATOR, at);
        return found < 0 ? text.length() : found;
    }

    /** One behind a value is due or tolerated, even where the length is one for ever. */
    private void takeSeparator() {
        if (at < text.length() && text.charAt(at) == ElementString.SEPARATOR) {
            at++;
        }
    }

    private void takeBracketed() {
        int close = text.indexOf(')', at);
        if (text.charAt(at) != '(' || close < 0) {
            throw refused("no bracket opens and closes at " + rest());
        }
        String ai = text.substring(at + 1, close);
        at = close + 1;
        StringBuilder value = new StringBuilder();
        while (at < text.length() && text.charAt(at) != '(') {
            boolean escaped = text.startsWith("\\(", at);
            value.append(text.charAt(escaped ? at + 1 : at));
            at += escaped ? 2 : 1;
        }
        add(ai, value.toString());
    }

    private void add(String ai, String value) {
        Optional<String> fault = Element.faultOf(ai, value);
        if (fault.isPresent()) {
            throw refused(fault.get());
        }
        elements.stream()
                .filter(e -> e.ai().equals(ai) && !e.value().equals(value))
                .findFirst()
                .ifPresent(
                        e -> {
                            throw refused("(" + ai + ") is both " + e.value() + " and " + value);
                        });
        elements.add(new Element(ai, value));
    }

    private String rest() {
        return "\"" + text.substring(at) + "\"";
    }

    private Refused refused(String because) {
        return new Refused(
                List.of(
                        new Problem(
                                "scan \"" + text + "\"",
                                because,
                                "scan the label again, or type what it stands for")));
    }
}
