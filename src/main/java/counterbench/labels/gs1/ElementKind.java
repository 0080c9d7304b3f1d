package counterbench.labels.gs1;

import java.util.List;
import java.util.Optional;

/**
 * What an application identifier stands for, and how its values are written.
 *
 * @param ai the identifier, two to four digits
 * @param title GS1's name for it
 * @param components the parts of a value
 * @param separated whether a separator must stand between a value and what follows; the others have
 *     one length for ever
 */
record ElementKind(String ai, String title, List<Component> components, boolean separated) {
    ElementKind {
        components = List.copyOf(components);
    }

    /** The length of every value, where no separator is needed. */
    int length() {
        return components.stream().mapToInt(Component::most).sum();
    }

    /** What is wrong with a value; empty if nothing is. */
    Optional<String> fault(String value) {
        int at = 0;
        for (int i = 0; i < components.size(); i++) {
            Component component = components.get(i);
            if (at == value.length() && component.optional()) {
                return Optional.empty();
            }
            boolean last = i == components.size() - 1;
            int end = last ? value.length() : Math.min(value.length(), at + component.most());
            Optional<String> fault = component.fault(value.substring(at, end));
            if (fault.isPresent()) {
                return fault;
            }
            at = end;
        }
        return Optional.empty();
    }
}
