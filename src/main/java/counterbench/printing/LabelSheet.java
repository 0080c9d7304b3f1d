package counterbench.printing;

import counterbench.labels.Label;
import java.util.List;
import java.util.Objects;

/**
 * Labels in the order in which they are drawn, row by row.
 *
 * @param skip how many places of the first sheet are used up already
 */
public record LabelSheet(Paper paper, int skip, List<Label> labels) {
    public LabelSheet {
        Objects.requireNonNull(paper, "paper");
        labels = List.copyOf(labels);
        if (skip < 0 || skip >= paper.labels()) {
            throw new IllegalArgumentException("a sheet has no place " + skip);
        }
    }

    /** How many sheets of paper they take. */
    public int sheets() {
        return (skip + labels.size() + paper.labels() - 1) / paper.labels();
    }
}
