package counterbench.intake.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.facts.Canonical;
import counterbench.facts.ColumnType;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RememberedRowsTest {
    private final RememberedRows rows = new RememberedRows(new HashMap<>());

    @ParameterizedTest
    @EnumSource(FactKind.class)
    void a_row_says_the_same_when_it_comes_back(FactKind kind) {
        List<Object> values = kind.columns().stream().map(c -> value(c.type())).toList();
        FactRow full = new FactRow(kind, new ArrayList<>(values), null);
        rows.put("full", full);
        assertThat(rows.find(kind, "full").map(Canonical::row)).contains(Canonical.row(full));
    }

    private static Object value(ColumnType type) {
        return switch (type) {
            case TIME -> Instant.parse("2026-03-05T14:20:00.123456Z");
            case DATE -> LocalDate.of(2026, 2, 28);
            case QUANTITY, AMOUNT -> new BigDecimal("12.5");
            case DECIMAL -> new BigDecimal("0.000001");
            case WHOLE -> 48_000L;
            default -> "5 \u00b0C; \u001f=\n";
        };
    }

    @ParameterizedTest
    @EnumSource(FactKind.class)
    void what_was_not_said_stays_unsaid(FactKind kind) {
        rows.put("empty", FactRow.of(kind));
        assertThat(rows.find(kind, "empty")).contains(FactRow.of(kind));
        assertThat(rows.find(kind, "another")).isEmpty();
        rows.clear();
        assertThat(rows.find(kind, "empty")).isEmpty();
    }
}
