package counterbench.facts;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The one way in which facts are written down for comparing and hashing: text in Unicode's composed
 * form (NFC), instants in UTC cut to microseconds, decimals at the column's scale.
 */
public final class Canonical {
    private static final char FIRST_COMBINING = '\u0300';
    private static final char UNIT_SEPARATOR = '\u001f';
    private static final DateTimeFormatter MICROS =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSSSS'Z'", Locale.ROOT)
                    .withZone(ZoneOffset.UTC);

    private Canonical() {}

    /** A row in one line: kind, ref, and heading and value of every column that says something. */
    public static String row(FactRow row) {
        return columns(row, row.kind().columns().size(), true);
    }

    /** As {@link #row}, of the required columns only and without the ref. */
    public static String requiredCells(FactRow row) {
        return columns(row, row.kind().requiredCount(), false);
    }

    /** As {@link #row}, of the key's columns only. */
    public static String key(FactRow row) {
        StringBuilder line = new StringBuilder(row.kind().word());
        for (String heading : row.kind().key()) {
            int i = row.kind().indexOf(heading);
            Column column = row.kind().columns().get(i);
            append(line, column, compared(column, row.values().get(i)));
        }
        return line.toString();
    }

    private static String columns(FactRow row, int count, boolean withRef) {
        StringBuilder line = new StringBuilder(96).append(row.kind().word());
        if (withRef && row.ref() != null) {
            line.append(UNIT_SEPARATOR).append("ref=").append(normalised(row.ref()));
        }
        for (int i = 0; i < count; i++) {
            append(line, row.kind().columns().get(i), row.values().get(i));
        }
        return line.toString();
    }

    private static void append(StringBuilder line, Column column, @Nullable Object value) {
        if (value != null) {
            line.append(UNIT_SEPARATOR)
                    .append(column.heading())
                    .append('=')
                    .append(text(column, value));
        }
    }

    private static @Nullable Object compared(Column column, @Nullable Object value) {
        return column.type() == ColumnType.VIN && value != null
                ? ((String) value).replaceAll("\\s", "").toUpperCase(Locale.ROOT)
                : value;
    }

    /** One value as it is written down. */
    public static String text(Column column, Object value) {
        if (value instanceof BigDecimal decimal) {
            return decimal.setScale(column.type().maxScale()).toPlainString();
        }
        if (value instanceof Instant instant) {
            return MICROS.format(cut(instant));
        }
        return normalised(value.toString());
    }

    /** Attributes and answers in one text: {@code engine=big; transmission=manual}. */
    public static String attributes(Map<String, String> said) {
        return new TreeMap<>(said)
                .entrySet().stream()
                        .map(a -> a.getKey() + "=" + a.getValue())
                        .collect(Collectors.joining("; "));
    }

    /** An instant as the store can hold it. */
    public static Instant cut(Instant instant) {
        return instant.truncatedTo(ChronoUnit.MICROS);
    }

    /** Text in Unicode's composed form (NFC), in which one name is always the same characters. */
    public static String normalised(String text) {
        return isBelowCombining(text) || Normalizer.isNormalized(text, Normalizer.Form.NFC)
                ? text
                : Normalizer.normalize(text, Normalizer.Form.NFC);
    }

    /** Whether nothing in the text can combine with anything, which is soon seen. */
    private static boolean isBelowCombining(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) >= FIRST_COMBINING) {
                return false;
            }
        }
        return true;
    }
}
