package counterbench.labels.gs1;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Days as GS1 labels bear them, {@code YYMMDD}. The day 00 stands for the last of its month. The
 * century follows from the year in which the label is read: it reaches 49 years back and 50 ahead
 * (GS1 General Specifications, section 7.12).
 */
public final class Gs1Date {
    private static final Pattern FORM = Pattern.compile("[0-9]{6}");

    /** Leap years repeat within a century as in this one, so forms are judged by it. */
    private static final int ANY_CENTURY = 2000;

    private Gs1Date() {}

    /**
     * Whether a text has the form of a day.
     *
     * @param zeroDay whether the day may be 00
     */
    static boolean isOne(String text, boolean zeroDay) {
        boolean form = FORM.matcher(text).matches() && (zeroDay || number(text, 4) > 0);
        return form && day(text, ANY_CENTURY + number(text, 0)).isPresent();
    }

    /**
     * The day that a text means; empty if there is no such day.
     *
     * @param year the year in which it is read
     */
    public static Optional<LocalDate> of(String text, int year) {
        return FORM.matcher(text).matches()
                ? day(text, fullYear(number(text, 0), year))
                : Optional.empty();
    }

    private static int fullYear(int yy, int year) {
        int ahead = yy - year % 100;
        int century = year - year % 100 + yy;
        if (ahead >= 51) {
            return century - 100;
        }
        return ahead <= -50 ? century + 100 : century;
    }

    private static Optional<LocalDate> day(String text, int year) {
        try {
            YearMonth month = YearMonth.of(year, number(text, 2));
            int day = number(text, 4);
            return Optional.of(day == 0 ? month.atEndOfMonth() : month.atDay(day));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static int number(String text, int from) {
        return Integer.parseInt(text.substring(from, from + 2));
    }

    /** A day as labels bear it. Whether it will be read as such depends on the year of reading. */
    public static String written(LocalDate day) {
        return String.format(
                Locale.ROOT,
                "%02d%02d%02d",
                day.getYear() % 100,
                day.getMonthValue(),
                day.getDayOfMonth());
    }
}
