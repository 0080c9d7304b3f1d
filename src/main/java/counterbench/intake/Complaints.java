package counterbench.intake;

import counterbench.facts.Canonical;
import counterbench.facts.Column;
import counterbench.facts.FactRow;
import counterbench.shared.Address;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What is wrong with one row. */
public final class Complaints {
    private final FactRow row;
    private final ZoneId zone;
    private final Set<String> unread;
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
        this(row, zone, Set.of());
    }

    /**
     * @param unread headings of cells that say something which could not be read; it is complained
     *     of already
     */
    public Complaints(FactRow row, ZoneId zone, Set<String> unread) {
        this.row = row;
        this.zone = zone;
        this.unread = Set.copyOf(unread);
    }

    /** For other checks of the same row. */
    Complaints anew() {
        return new Complaints(row, zone, unread);
    }

    /** Whether the cell under a heading says something that could not be read. */
    boolean isUnread(String heading) {
        return unread.contains(heading);
    }

    /** Whether the cell under a heading says nothing. */
    boolean isEmpty(String heading) {
        return row.get(heading) == null && !isUnread(heading);
    }

    /** Complains of the cell under a heading, unless it is complained of already. */
    public void of(String heading, String wrong, String right) {
        if (!isUnread(heading)) {
            all.add(new Complaint(heading, value(heading), wrong, right));
        }
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

    /**
     * Complains that the row is nearly one that is held, and may correct it.
     *
     * @param held what that one says
     * @param headings those in which they differ
     */
    public void corrects(Address where, FactRow held, List<String> headings) {
        String differences =
                headings.stream()
                        .map(
                                h ->
                                        h
                                                + " is "
                                                + said(held, h)
                                                + " there and "
                                                + said(row, h)
                                                + " here")
                        .collect(Collectors.joining(", "));
        ofRow(
                "differs only in optional cells from "
                        + where
                        + ", which was imported before: "
                        + differences,
                "if it corrects that one, take it back first (reverse "
                        + where
                        + " --reason TEXT); if both are true, import with --as-new");
    }

    private String said(FactRow of, String heading) {
        String text = value(of, heading);
        return text.isEmpty() ? "empty" : "\"" + text + "\"";
    }

    private String value(String heading) {
        return value(row, heading);
    }

    private String value(FactRow of, String heading) {
        int i = row.kind().indexOf(heading);
        @Nullable Object value = of.values().get(i);
        return value == null ? "" : shown(of.kind().columns().get(i), value);
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
