package counterbench.sheets.report;

import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * The rows of a sheet, made while they are written. A row gives values by field; a field that is
 * absent or null leaves its cell empty. Values are texts, enums, {@link java.math.BigDecimal},
 * {@link counterbench.shared.Quantity}, whole numbers, {@link java.time.LocalDate} and {@link
 * java.time.Instant}.
 */
@FunctionalInterface
public interface ReportRows {
    /** Hands every row over, in order. The map may be used again for the next row. */
    void each(Consumer<Map<String, ? extends @Nullable Object>> taker);

    /** Rows that are there already. */
    static ReportRows of(Iterable<? extends Map<String, ? extends @Nullable Object>> rows) {
        return taker -> rows.forEach(taker);
    }
}
