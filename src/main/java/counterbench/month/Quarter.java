package counterbench.month;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A quarter of a calendar year, written {@code 2026-Q1}. */
public record Quarter(int year, int number) implements Comparable<Quarter> {
    private static final Pattern WRITTEN = Pattern.compile("([0-9]{4})-[Qq]([1-4])");

    /** How many quarters are reported, the first included: 40 CFR 1068.525(b). */
    public static final int REPORTED = 6;

    /** The quarter that is written so. */
    public static Optional<Quarter> of(String text) {
        Matcher matcher = WRITTEN.matcher(text.strip());
        return matcher.matches()
                ? Optional.of(
                        new Quarter(
                                Integer.parseInt(matcher.group(1)),
                                Integer.parseInt(matcher.group(2))))
                : Optional.empty();
    }

    /** The quarter of a day. */
    public static Quarter of(LocalDate day) {
        return new Quarter(day.getYear(), (day.getMonthValue() + 2) / 3);
    }

    /** Its first day. */
    public LocalDate firstDay() {
        return LocalDate.of(year, number * 3 - 2, 1);
    }

    /** Its last day. */
    public LocalDate lastDay() {
        return YearMonth.of(year, number * 3).atEndOfMonth();
    }

    /** The one after it. */
    public Quarter next() {
        return number == 4 ? new Quarter(year + 1, 1) : new Quarter(year, number + 1);
    }

    /** How many quarters it is after another, that one counted as the first. */
    public int placeAfter(Quarter first) {
        return (year - first.year) * 4 + number - first.number + 1;
    }

    /**
     * The day by which its report is due: the 30th of the month after it, moved from a weekend to
     * the Monday. 49 CFR 573.7(d), from memory; it moves for federal holidays as well, which are
     * not in here.
     */
    public LocalDate dueOn() {
        LocalDate day = lastDay().plusDays(30);
        if (day.getDayOfMonth() != 30) {
            day = day.withDayOfMonth(30);
        }
        return switch (day.getDayOfWeek()) {
            case SATURDAY -> day.plusDays(2);
            case SUNDAY -> day.plusDays(1);
            default -> day;
        };
    }

    @Override
    public int compareTo(Quarter other) {
        return year == other.year ? number - other.number : year - other.year;
    }

    @Override
    public String toString() {
        return year + "-Q" + number;
    }
}
