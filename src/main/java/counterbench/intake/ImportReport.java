package counterbench.intake;

import counterbench.facts.FactKind;
import counterbench.journal.Entry;
import counterbench.sheets.RowProblem;
import counterbench.sheets.Sheet;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What an import did.
 *
 * @param sheets the sheets that were read
 * @param counts rows by kind
 * @param problems why rows were refused; if there are any, nothing was recorded
 * @param entries the entries that were recorded, one a site; none if nothing was new
 * @param late rows of sealed months, which are booked in the first open one
 * @param ahead rows that were new and tell of a time that has not come yet
 */
public record ImportReport(
        List<Sheet> sheets,
        Map<FactKind, Counts> counts,
        List<RowProblem> problems,
        List<Entry> entries,
        int late,
        Optional<Ahead.Found> ahead) {
    public ImportReport {
        sheets = List.copyOf(sheets);
        counts = Collections.unmodifiableMap(new EnumMap<>(counts));
        problems = List.copyOf(problems);
        entries = List.copyOf(entries);
    }

    /** Rows of one kind: recorded, known already, refused. */
    public record Counts(int recorded, int known, int refused) {
        /** No rows. */
        public static final Counts NONE = new Counts(0, 0, 0);

        /** These and the others together. */
        public Counts plus(Counts other) {
            return new Counts(
                    recorded + other.recorded, known + other.known, refused + other.refused);
        }
    }

    /** Whether rows were refused, and so nothing was recorded. */
    public boolean isRefused() {
        return !problems.isEmpty();
    }
}
