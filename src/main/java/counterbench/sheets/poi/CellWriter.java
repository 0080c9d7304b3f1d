package counterbench.sheets.poi;

import counterbench.shared.Quantity;
import counterbench.shared.Visible;
import counterbench.sheets.SheetLimits;
import counterbench.sheets.report.CellFormat;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import org.apache.poi.ss.usermodel.Cell;
import org.jspecify.annotations.Nullable;

/** Writes values into cells by the format of their column. */
final class CellWriter {
    private static final LocalDate FIRST_DAY = LocalDate.of(1900, 3, 1);

    private final Styles styles;
    private final ZoneId zone;

    CellWriter(Styles styles, ZoneId zone) {
        this.styles = styles;
        this.zone = zone;
    }

    /** Writes a value; nothing is a cell with its lines only. */
    void write(Cell cell, CellFormat format, @Nullable Object value) {
        cell.setCellStyle(styles.body(format));
        if (value == null) {
            return;
        }
        switch (format) {
            case TEXT, NOTE -> writeText(cell, format, text(value));
            case DATE -> writeDay(cell, day(value));
            case TIME -> writeTime(cell, time(value));
            default -> writeNumber(cell, number(value));
        }
    }

    private void writeText(Cell cell, CellFormat format, String text) {
        cell.setCellValue(text);
        if (!text.isEmpty() && "=+-@'".indexOf(text.charAt(0)) >= 0) {
            cell.setCellStyle(styles.guarded(format));
        }
    }

    /** A value as text that a cell can hold. */
    String text(Object value) {
        String text =
                value instanceof BigDecimal decimal
                        ? decimal.toPlainString()
                        : value instanceof Instant instant
                                ? local(instant).toString().replace('T', ' ')
                                : Visible.text(value.toString());
        return text.length() <= SheetLimits.TEXT
                ? text
                : text.substring(0, SheetLimits.TEXT - 1) + "…";
    }

    private LocalDate day(Object value) {
        if (value instanceof Instant instant) {
            return local(instant).toLocalDate();
        }
        return value instanceof LocalDateTime time ? time.toLocalDate() : (LocalDate) value;
    }

    private LocalDateTime time(Object value) {
        if (value instanceof Instant instant) {
            return local(instant);
        }
        return value instanceof LocalDate day ? day.atStartOfDay() : (LocalDateTime) value;
    }

    private LocalDateTime local(Instant instant) {
        return LocalDateTime.ofInstant(instant.truncatedTo(ChronoUnit.SECONDS), zone);
    }

    private void writeDay(Cell cell, LocalDate day) {
        if (day.isBefore(FIRST_DAY)) {
            writeText(cell, CellFormat.TEXT, day.toString());
        } else {
            cell.setCellValue(day);
        }
    }

    private void writeTime(Cell cell, LocalDateTime time) {
        if (time.toLocalDate().isBefore(FIRST_DAY)) {
            writeText(cell, CellFormat.TEXT, time.toString());
        } else {
            cell.setCellValue(time);
        }
    }

    /** A number with more digits than a cell keeps is written as text, so that none is lost. */
    private void writeNumber(Cell cell, BigDecimal number) {
        if (number.stripTrailingZeros().precision() > SheetLimits.DIGITS) {
            cell.setCellValue(number.toPlainString());
        } else {
            cell.setCellValue(number.doubleValue());
        }
    }

    /** A value of a number's column. */
    static BigDecimal number(Object value) {
        if (value instanceof Quantity quantity) {
            return quantity.amount();
        }
        if (value instanceof Long || value instanceof Integer) {
            return BigDecimal.valueOf(((Number) value).longValue());
        }
        return (BigDecimal) value;
    }
}
