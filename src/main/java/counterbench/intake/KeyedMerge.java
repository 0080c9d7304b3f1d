package counterbench.intake;

import counterbench.campaign.Vehicle;
import counterbench.facts.Canonical;
import counterbench.facts.Column;
import counterbench.facts.ColumnType;
import counterbench.facts.FactRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Rows that are known by a key: what they say together, and whether another row says more or
 * something else. No field ever holds two values, so the order of rows does not matter.
 */
public final class KeyedMerge {
    private KeyedMerge() {}

    /** What another row of the same key does to what is known. */
    public sealed interface Outcome {
        /** It says nothing that is not known. */
        record Known() implements Outcome {}

        /** It fills cells that were empty. */
        record Fills(FactRow merged) implements Outcome {}

        /** It says something else. */
        record Differs(String heading, String known) implements Outcome {}
    }

    /** Puts a row beside what is known under its key. */
    public static Outcome put(FactRow known, FactRow row) {
        List<@Nullable Object> merged = new ArrayList<>(known.values());
        boolean fills = false;
        for (int i = 0; i < merged.size(); i++) {
            Column column = row.kind().columns().get(i);
            @Nullable Object said = row.values().get(i);
            @Nullable Object before = merged.get(i);
            if (said == null) {
                continue;
            }
            if (before == null) {
                merged.set(i, said);
                fills = true;
            } else if (!same(column, before, said)) {
                return new Outcome.Differs(column.heading(), Canonical.text(column, before));
            }
        }
        return fills
                ? new Outcome.Fills(new FactRow(row.kind(), merged, null))
                : new Outcome.Known();
    }

    /** What several rows of one key say together; empty for no rows. */
    public static Optional<FactRow> together(List<FactRow> rows) {
        return rows.stream()
                .reduce(
                        (known, row) ->
                                put(known, row) instanceof Outcome.Fills fills
                                        ? fills.merged()
                                        : known);
    }

    private static boolean same(Column column, Object before, Object said) {
        if (column.type() == ColumnType.VIN) {
            return Vehicle.compared((String) before).equals(Vehicle.compared((String) said));
        }
        return Canonical.text(column, before).equals(Canonical.text(column, said));
    }
}
