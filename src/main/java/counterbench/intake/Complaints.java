package counterbench.intake;

import counterbench.facts.Canonical;
import counterbench.facts.FactRow;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is wrong with one row. */
public final class Complaints {
    private final FactRow row;
    private final List<Complaint> all = new ArrayList<>(0);

    /**
     * One thing that is wrong.
     *
     * @param heading the heading of the cell; empty for the row as a whole
     * @param value the cell's text; empty if it says nothing
     */
    public record Complaint(String heading, String value, String wrong, String right) {}

    public Complaints(FactRow row) {
        this.row = row;
    }

    /** Complains of the cell under a heading. */
    public void of(String heading, String wrong, String right) {
        all.add(new Complaint(heading, value(heading), wrong, right));
    }

    /** Complains of the row as a whole. */
    public void ofRow(String wrong, String right) {
        all.add(new Complaint("", "", wrong, right));
    }

    private String value(String heading) {
        int i = row.kind().indexOf(heading);
        @Nullable Object value = row.values().get(i);
        return value == null ? "" : Canonical.text(row.kind().columns().get(i), value);
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
