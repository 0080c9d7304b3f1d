package counterbench.intake;

import counterbench.campaign.Vehicle;
import counterbench.facts.Canonical;
import counterbench.facts.Column;
import counterbench.facts.ColumnType;
import counterbench.facts.FactRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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

        /** It says something else: of a list of vehicles' attributes, in one of them. */
        record Differs(Column column, Object said, Object known) implements Outcome {}
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
            } else if (column.type() == ColumnType.ATTRIBUTES) {
                Attributes both = Attributes.of((String) before, (String) said);
                if (both.differs() != null) {
                    return both.differs();
                }
                fills |= both.fills();
                merged.set(i, both.together());
            } else if (!same(column, before, said)) {
                return new Outcome.Differs(column, said, before);
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

    /**
     * Attributes of one vehicle that two rows name, each with its own empty cells.
     *
     * @param differs the first by name to which the rows give two answers
     * @param fills whether the second row names one that the first does not
     */
    private record Attributes(Outcome.@Nullable Differs differs, boolean fills, String together) {
        static Attributes of(String before, String said) {
            Map<String, String> known = Vehicle.attributesOf(before);
            Map<String, String> together = new TreeMap<>(known);
            Vehicle.attributesOf(said).forEach(together::putIfAbsent);
            Outcome.Differs differs =
                    Vehicle.attributesOf(said).entrySet().stream()
                            .map(a -> differs(a, known.getOrDefault(a.getKey(), a.getValue())))
                            .filter(d -> !d.said().equals(d.known()))
                            .findFirst()
                            .orElse(null);
            return new Attributes(
                    differs, together.size() > known.size(), Canonical.attributes(together));
        }

        private static Outcome.Differs differs(Map.Entry<String, String> said, String known) {
            Column column = new Column(said.getKey(), ColumnType.TEXT, false, List.of());
            return new Outcome.Differs(column, said.getValue(), known);
        }
    }

    private static boolean same(Column column, Object before, Object said) {
        if (column.type() == ColumnType.VIN) {
            return Vehicle.compared((String) before).equals(Vehicle.compared((String) said));
        }
        return Canonical.text(column, before).equals(Canonical.text(column, said));
    }
}
