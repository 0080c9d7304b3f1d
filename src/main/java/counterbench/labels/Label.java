package counterbench.labels;

import counterbench.labels.gs1.ElementString;
import java.util.List;
import java.util.Objects;

/**
 * What is printed on one label.
 *
 * @param headline what it is on, in large letters
 * @param lines what else people want to know
 * @param cautions what they must know
 * @param content what its symbol says, which stands in readable form below
 */
public record Label(
        String headline, List<String> lines, List<String> cautions, ElementString content) {
    public Label {
        Objects.requireNonNull(headline, "headline");
        lines = List.copyOf(lines);
        cautions = List.copyOf(cautions);
        Objects.requireNonNull(content, "content");
    }
}
