package counterbench.intake;

import counterbench.facts.Canonical;
import counterbench.facts.Column;
import counterbench.facts.FactRow;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is wrong with one row. */
public final class Complaints {
    private final FactRow row;
    private final ZoneId zone;
    private final List<Complaint> all = new ArrayList<>(0);

    /**
     * One thing that is wrong.
     *
     * @param heading the heading of the cell; empty for the row as a whole
     * @param value the cell's text; empty if it says nothing
     */
    public record Complaint(String heading, String value, String wrong, String right) {}

    /**
     * @param zone the site's, in which times are shown
     */
    public Complaints(FactRow row, ZoneId zone) {
        this.row = row;
        this.zone = zone;
    }

    /** Complains of the cell under a heading. */
    public void of(String heading, String wrong, String right) {
        all.add(new Complaint(heading, value(heading), wrong, right));
    }

    /** Complains of a cell that says otherwise than what is known. */
    public void differs(Column column, Object said, Object known) {
        all.add(
                new Complaint(
                        column.heading(),
                        shown(column, said),
                        "differs from what is known: \"" + shown(column, known) + "\"",
                        "correct the cell; if the earlier row was wrong, reverse it first"));
    }

    /** Complains of the row as a whole. */
    public void ofRow(String wrong, String right) {
        all.add(new Complaint("", "", wrong, right));
    }

    private String value(String heading) {
        int i = row.kind().indexOf(heading);
        @Nullable Object value = row.values().get(i);
        return value == null ? "" : shown(row.kind().columns().get(i), value);
    }

    /** A value as people write it: a number without idle zeros, a time with its offset. */
    private String shown(Column column, Object value) {
        if (value instanceof BigDecimal number) {
            return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
        }
        return value instanceof Instant time
                ? time.atZone(zone).toOffsetDateTime().toString()
                : Canonical.text(column, value);
    }

    /** Everything so far. */
    public List<Complaint> all() {
        return List.copyOf(all);
    }

    /** Whether nothing is wrong. */
    public boolean isEmpty() {
        return all.isEmpty();
    }
}
