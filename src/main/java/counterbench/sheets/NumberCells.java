package counterbench.sheets;

import counterbench.facts.Column;
import counterbench.facts.ColumnType;
import counterbench.facts.FactKind;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Numbers of cells, exact. A workbook's number cell keeps 15 significant digits and writes what a
 * double holds, so {@code 0.30000000000000004} means 0.3: such numbers are rounded to 15 digits,
 * half to even. Text is taken to the last digit.
 */
final class NumberCells {
    private static final Pattern PLAIN = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");
    private static final Pattern POWER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?[eE][+-]?[0-9]+");
    private static final MathContext CELL =
            new MathContext(SheetLimits.DIGITS, RoundingMode.HALF_EVEN);
    private static final int MOST_DIGITS = 12;
    private static final String EXAMPLE = "write a plain decimal such as 12.5";

    private NumberCells() {}

    /** A decimal of a column, or null. */
    static @Nullable BigDecimal decimal(
            FactKind kind, Column column, Cell cell, Complaint complaint) {
        BigDecimal number = number(cell, complaint);
        if (number == null || refusesSize(number, complaint)) {
            return null;
        }
        if (number.signum() < 0 && !mayBeNegative(kind, column)) {
            complaint.wrong("is below zero", "write how much it is, without a sign");
            return null;
        }
        return scaled(number, column.type().maxScale(), complaint);
    }

    /** A whole number that is not below zero, or null. */
    static @Nullable Long whole(Cell cell, Complaint complaint) {
        BigDecimal number = number(cell, complaint);
        if (number == null || refusesSize(number, complaint)) {
            return null;
        }
        if (number.signum() < 0) {
            complaint.wrong("is below zero", "write a whole number");
            return null;
        }
        BigDecimal whole = scaled(number, 0, complaint);
        return whole == null ? null : whole.longValueExact();
    }

    /** The digits of a number that stands in a text column, or null. */
    static @Nullable String digits(String text, Complaint complaint) {
        BigDecimal number = new BigDecimal(text);
        boolean kept = number.precision() - number.scale() <= SheetLimits.DIGITS;
        if (!kept || number.stripTrailingZeros().scale() > 0) {
            complaint.wrong(
                    kept
                            ? "is a number cell, which does not keep how it was typed"
                            : "is a number cell, which keeps 15 digits only",
                    "format the column as text, then type the value again");
            return null;
        }
        return number.toBigInteger().toString();
    }

    private static boolean mayBeNegative(FactKind kind, Column column) {
        return kind == FactKind.CREDITS
                ? column.type() == ColumnType.AMOUNT
                : kind == FactKind.MARKS && column.heading().equals("value");
    }

    private static @Nullable BigDecimal number(Cell cell, Complaint complaint) {
        return switch (cell.form()) {
            case NUMBER, SHAPED_NUMBER -> new BigDecimal(cell.text()).round(CELL);
            case DATE -> {
                complaint.wrong(
                        "is a date cell", "format the column as number, then type it again");
                yield null;
            }
            default -> typed(Text.trimmed(cell.text()), complaint);
        };
    }

    private static @Nullable BigDecimal typed(String text, Complaint complaint) {
        if (text.length() <= SheetLimits.TEXT && PLAIN.matcher(text).matches()) {
            return new BigDecimal(text);
        }
        if (POWER.matcher(text).matches()) {
            complaint.wrong("is written as a power of ten", EXAMPLE);
        } else if (text.indexOf(',') >= 0) {
            complaint.wrong(
                    "has a comma", "use a point for decimals and nothing between thousands");
        } else if (text.codePoints().anyMatch(NumberCells::isCurrency)) {
            complaint.wrong("has a currency sign", "write the amount alone, such as 480.00");
        } else {
            complaint.wrong("is not a number", EXAMPLE);
        }
        return null;
    }

    private static boolean isCurrency(int c) {
        return Character.getType(c) == Character.CURRENCY_SYMBOL;
    }

    private static boolean refusesSize(BigDecimal number, Complaint complaint) {
        boolean tooLarge =
                number.signum() != 0 && (long) number.precision() - number.scale() > MOST_DIGITS;
        if (tooLarge) {
            complaint.wrong("is too large", "at most " + MOST_DIGITS + " digits are kept");
        }
        return tooLarge;
    }

    private static @Nullable BigDecimal scaled(BigDecimal number, int scale, Complaint complaint) {
        BigDecimal stripped = number.stripTrailingZeros();
        if (stripped.scale() <= scale) {
            return stripped.setScale(scale);
        }
        String rounded = stripped.setScale(scale, RoundingMode.HALF_EVEN).toPlainString();
        complaint.wrong(
                scale == 0 ? "is not whole" : "has more than " + scale + " decimal places",
                "round it, such as " + rounded);
        return null;
    }
}
