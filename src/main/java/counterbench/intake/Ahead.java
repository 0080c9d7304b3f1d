package counterbench.intake;

import counterbench.facts.Column;
import counterbench.facts.FactRow;
import counterbench.shared.Site;
import counterbench.sheets.RowPosition;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Counts rows that tell of something done at a time that has not come yet. They are taken as they
 * stand, since clocks differ; mostly a year or a month was written wrongly.
 */
public final class Ahead {
    /**
     * Days on which something was done; other days, such as one on which a lot expires, may come.
     */
    private static final Set<String> DAYS =
            Set.of(
                    "ordered_on",
                    "cancelled_on",
                    "calibrated_on",
                    "submitted_on",
                    "withdrawn_on",
                    "denied_on",
                    "paid_on");

    private final Instant now;
    private int rows;
    private @Nullable First first;

    /**
     * @param now the time at which the rows are read
     */
    public Ahead(Instant now) {
        this.now = now;
    }

    /**
     * The first such row as it stands in the files.
     *
     * @param heading the first of its cells that is so
     * @param time what the cell says, at the site
     */
    public record First(RowPosition at, String heading, String time) {}

    /** What was found. */
    public record Found(int rows, First first) {}

    /** Looks at a row that will be recorded. */
    public void look(Site site, FactRow fact, RowPosition at) {
        for (Column column : fact.kind().columns()) {
            Optional<String> time = ahead(site, column, fact.get(column.heading()));
            if (time.isPresent()) {
                rows++;
                if (first == null || RowPosition.IN_FILES.compare(at, first.at()) < 0) {
                    first = new First(at, column.heading(), time.get());
                }
                return;
            }
        }
    }

    private Optional<String> ahead(Site site, Column column, @Nullable Object value) {
        if (value instanceof Instant at) {
            return at.isAfter(now) ? Optional.of(site.wallTime(at)) : Optional.empty();
        }
        boolean isAhead =
                value instanceof LocalDate day
                        && DAYS.contains(column.heading())
                        && day.isAfter(site.dayOf(now));
        return isAhead ? Optional.of(String.valueOf(value)) : Optional.empty();
    }

    /** What was found; empty where all times have come. */
    public Optional<Found> found() {
        return Optional.ofNullable(first).map(one -> new Found(rows, one));
    }
}
