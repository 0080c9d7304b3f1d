package counterbench.intake.store;

import counterbench.facts.Canonical;
import counterbench.facts.Column;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Rows by a name of theirs, without their refs, in a map that may lie in a file: as texts. */
final class RememberedRows {
    private final Map<String, @Nullable Object[]> texts;

    /**
     * @param texts an empty map
     */
    RememberedRows(Map<String, @Nullable Object[]> texts) {
        this.texts = texts;
    }

    void put(String name, FactRow row) {
        List<Column> columns = row.kind().columns();
        @Nullable Object[] cells = new @Nullable Object[columns.size()];
        for (int i = 0; i < cells.length; i++) {
            Object value = row.values().get(i);
            cells[i] = value == null ? null : Canonical.text(columns.get(i), value);
        }
        texts.put(name, cells);
    }

    Optional<FactRow> find(FactKind kind, String name) {
        @Nullable Object[] cells = texts.get(name);
        if (cells == null) {
            return Optional.empty();
        }
        List<@Nullable Object> values = new ArrayList<>(cells.length);
        for (int i = 0; i < cells.length; i++) {
            Object text = cells[i];
            values.add(text == null ? null : value(kind.columns().get(i), (String) text));
        }
        return Optional.of(new FactRow(kind, values, null));
    }

    private static Object value(Column column, String text) {
        return switch (column.type()) {
            case TIME -> Instant.parse(text);
            case DATE -> LocalDate.parse(text);
            case QUANTITY, DECIMAL, AMOUNT -> new BigDecimal(text);
            case WHOLE -> Long.valueOf(text);
            default -> text;
        };
    }

    void clear() {
        texts.clear();
    }
}
