package counterbench.sheets;

import counterbench.facts.FactRow;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What became of a row: either a fact or problems.
 *
 * @param fact the fact; null if there are problems
 * @param site whose paper the row is, as it is written in the row; null if it does not say
 */
public record ParsedRow(
        RowPosition at, @Nullable FactRow fact, @Nullable String site, List<RowProblem> problems) {
    public ParsedRow {
        Objects.requireNonNull(at, "at");
        problems = List.copyOf(problems);
        if ((fact == null) == problems.isEmpty()) {
            throw new IllegalArgumentException("a row is either a fact or has problems");
        }
    }
}
