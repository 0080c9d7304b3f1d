package counterbench.facts;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One fact, as a row of its kind.
 *
 * @param values one value a column in the order of the kind's columns, of the column's Java type;
 *     null where nothing was said
 * @param ref the paper's own number for the row, if it has one
 */
public record FactRow(FactKind kind, List<@Nullable Object> values, @Nullable String ref) {
    public FactRow {
        Objects.requireNonNull(kind, "kind");
        if (values.size() != kind.columns().size()) {
            throw new IllegalArgumentException(
                    kind.word()
                            + " has "
                            + kind.columns().size()
                            + " columns, not "
                            + values.size());
        }
        values = Collections.unmodifiableList(asKept(values));
        ref = ref == null ? null : Canonical.normalised(ref);
    }

    /** Values as the store keeps them, so that what is hashed is what is read back. */
    private static List<@Nullable Object> asKept(List<@Nullable Object> values) {
        List<@Nullable Object> kept = new ArrayList<>(values.size());
        for (Object value : values) {
            kept.add(asKept(value));
        }
        return kept;
    }

    private static @Nullable Object asKept(@Nullable Object value) {
        if (value instanceof Instant instant) {
            return Canonical.cut(instant);
        }
        return value instanceof String text ? Canonical.normalised(text) : value;
    }

    /** A row that says nothing yet. */
    public static FactRow of(FactKind kind) {
        return new FactRow(kind, Collections.nCopies(kind.columns().size(), null), null);
    }

    /** The value under a heading, or null where nothing was said. */
    public @Nullable Object get(String heading) {
        return values.get(kind.indexOf(heading));
    }

    /** The text under a heading. */
    public @Nullable String text(String heading) {
        return (String) get(heading);
    }

    /** The instant under a heading. */
    public @Nullable Instant time(String heading) {
        return (Instant) get(heading);
    }

    /** The day under a heading. */
    public @Nullable LocalDate date(String heading) {
        return (LocalDate) get(heading);
    }

    /** The number under a heading. */
    public @Nullable BigDecimal decimal(String heading) {
        return (BigDecimal) get(heading);
    }

    /** The whole number under a heading. */
    public @Nullable Long whole(String heading) {
        return (Long) get(heading);
    }

    /** The same row with another value under a heading. */
    public FactRow with(String heading, @Nullable Object value) {
        List<@Nullable Object> changed = new ArrayList<>(values);
        changed.set(kind.indexOf(heading), value);
        return new FactRow(kind, changed, ref);
    }
}
