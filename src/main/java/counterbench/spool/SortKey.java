package counterbench.spool;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes what rows are sorted by as one text, so that texts compare as the values do. */
final class SortKey {
    private static final String END = "\u0000";

    private SortKey() {}

    static String of(List<?> values) {
        return values.stream().map(SortKey::text).collect(Collectors.joining(END));
    }

    private static String text(Object value) {
        if (value instanceof Instant at) {
            return number(at.getEpochSecond()) + String.format(Locale.ROOT, "%09d", at.getNano());
        }
        if (value instanceof LocalDate day) {
            return number(day.toEpochDay());
        }
        return value instanceof Long || value instanceof Integer
                ? number(((Number) value).longValue())
                : value.toString();
    }

    /** Numbers below zero come first: shifted, all of them have one length. */
    private static String number(long value) {
        return String.format(Locale.ROOT, "%016x", value ^ Long.MIN_VALUE);
    }
}
