package counterbench.sheets;

import counterbench.facts.FactRow;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What became of a row: either a fact or problems.
 *
 * @param fact the fact; null if there are problems
 * @param rest where there are problems, what its other cells say, so that these can be checked all
 *     the same; null where it cannot be told which cell is which, or whose paper it is
 * @param site whose paper the row is, as it is written in the row; null if it does not say
 */
public record ParsedRow(
        RowPosition at,
        @Nullable FactRow fact,
        @Nullable FactRow rest,
        @Nullable String site,
        List<RowProblem> problems) {
    public ParsedRow {
        Objects.requireNonNull(at, "at");
        problems = List.copyOf(problems);
        if ((fact == null) == problems.isEmpty()) {
            throw new IllegalArgumentException("a row is either a fact or has problems");
        }
    }

    /** The headings of the cells that could not be read. */
    public Set<String> unread() {
        return problems.stream().map(RowProblem::heading).collect(Collectors.toSet());
    }
}
