package counterbench.care.store;

import java.math.BigDecimal;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A column of a table, and how its values are written so that both stores read the same again. */
record TableColumn(String name, Sort sort) {
    /** What a column holds. */
    enum Sort {
        WHOLE,
        EXACT,
        TEXT,
        TIME,
        DAY,
        IDENTIFIER
    }

    /** The column of a type as the store's catalogue calls it. */
    static TableColumn of(String name, String type) {
        Sort sort =
                switch (type.toLowerCase(Locale.ROOT)) {
                    case "smallint", "integer", "bigint" -> Sort.WHOLE;
                    case "numeric", "decimal" -> Sort.EXACT;
                    case "character varying" -> Sort.TEXT;
                    case "timestamp with time zone" -> Sort.TIME;
                    case "date" -> Sort.DAY;
                    case "uuid" -> Sort.IDENTIFIER;
                    default -> throw new IllegalStateException(name + " is of type " + type);
                };
        return new TableColumn(name, sort);
    }

    /** A value as text; null where there is none. */
    @Nullable String read(ResultSet rows, int at) throws SQLException {
        Object value =
                switch (sort) {
                    case WHOLE, EXACT -> rows.getBigDecimal(at);
                    case TEXT -> rows.getString(at);
                    case TIME -> rows.getObject(at, OffsetDateTime.class);
                    case DAY -> rows.getObject(at, LocalDate.class);
                    case IDENTIFIER -> rows.getObject(at, UUID.class);
                };
        if (value instanceof BigDecimal number) {
            return number.toPlainString();
        }
        return value instanceof OffsetDateTime time
                ? time.toInstant().toString()
                : value == null ? null : value.toString();
    }

    /** Gives a statement the value that a text says. */
    void bind(PreparedStatement statement, int at, @Nullable String text) throws SQLException {
        if (text == null) {
            statement.setNull(at, sqlType());
            return;
        }
        switch (sort) {
            case WHOLE -> statement.setLong(at, Long.parseLong(text));
            case EXACT -> statement.setBigDecimal(at, new BigDecimal(text));
            case TEXT -> statement.setString(at, text);
            case TIME -> statement.setObject(at, Instant.parse(text).atOffset(ZoneOffset.UTC));
            case DAY -> statement.setObject(at, LocalDate.parse(text));
            case IDENTIFIER -> statement.setObject(at, UUID.fromString(text));
        }
    }

    private int sqlType() {
        return switch (sort) {
            case WHOLE -> Types.BIGINT;
            case EXACT -> Types.NUMERIC;
            case TEXT -> Types.VARCHAR;
            case TIME -> Types.TIMESTAMP_WITH_TIMEZONE;
            case DAY -> Types.DATE;
            case IDENTIFIER -> Types.OTHER;
        };
    }
}
