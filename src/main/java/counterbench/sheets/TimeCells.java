package counterbench.sheets;

import counterbench.facts.Canonical;
import counterbench.shared.WrittenTime;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Times and days of cells, as ISO 8601 writes them, or as the date cells of a workbook. A time
 * without an offset is local to the site; one that the site's clocks skip or show twice is refused.
 * Times are cut to microseconds.
 */
final class TimeCells {
    private static final Pattern DAY = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;
    private static final String TIME_EXAMPLE =
            "write it as 2026-03-05 14:20, or with an offset as 2026-03-05T14:20-06:00";
    private static final String DAY_EXAMPLE = "write it as 2026-03-05";

    private final ZoneId zone;

    TimeCells(ZoneId zone) {
        this.zone = zone;
    }

    /** The instant that a cell names, or null. */
    @Nullable Instant time(Cell cell, Complaint complaint) {
        if (refusesNumber(cell, complaint)) {
            return null;
        }
        String text = Text.trimmed(cell.text());
        WrittenTime written = WrittenTime.of(text).orElse(null);
        if (written == null) {
            complaint.wrong(whyNoTime(text), TIME_EXAMPLE);
            return null;
        }
        return refusesYear(written.local().toLocalDate(), complaint)
                ? null
                : instant(written, complaint);
    }

    private static String whyNoTime(String text) {
        if (WrittenTime.hasForm(text)) {
            return "is a time that there is not";
        }
        return DAY.matcher(text).matches() ? "has no time of day" : "is not a time";
    }

    private @Nullable Instant instant(WrittenTime written, Complaint complaint) {
        LocalDateTime local = written.local();
        return written.offset().isPresent()
                ? Canonical.cut(local.toInstant(written.offset().get()))
                : local(local, complaint);
    }

    private @Nullable Instant local(LocalDateTime local, Complaint complaint) {
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
        if (offsets.size() == 1) {
            return Canonical.cut(local.toInstant(offsets.get(0)));
        }
        ZoneOffsetTransition change = zone.getRules().getTransition(local);
        complaint.wrong(
                (change.isGap() ? "did not exist" : "was there twice")
                        + " in "
                        + zone
                        + ": clocks went from "
                        + change.getDateTimeBefore()
                        + " to "
                        + change.getDateTimeAfter(),
                "add the offset: " + withOffsets(local, change));
        return null;
    }

    private static String withOffsets(LocalDateTime local, ZoneOffsetTransition change) {
        if (change.isGap()) {
            return local.plus(change.getDuration()).atOffset(change.getOffsetAfter())
                    + " may be meant";
        }
        return List.of(change.getOffsetBefore(), change.getOffsetAfter()).stream()
                .map(o -> local.atOffset(o).toString())
                .collect(Collectors.joining(" or "));
    }

    /** The day that a cell names, or null. */
    static @Nullable LocalDate day(Cell cell, Complaint complaint) {
        if (refusesNumber(cell, complaint)) {
            return null;
        }
        String text = Text.trimmed(cell.text());
        if (cell.form() == Cell.Form.DATE && text.endsWith("T00:00:00")) {
            text = text.substring(0, text.indexOf('T'));
        }
        if (!DAY.matcher(text).matches()) {
            boolean time = WrittenTime.hasForm(text);
            complaint.wrong(time ? "has a time of day" : "is not a day", DAY_EXAMPLE);
            return null;
        }
        return day(text, complaint);
    }

    private static @Nullable LocalDate day(String text, Complaint complaint) {
        try {
            LocalDate day = LocalDate.parse(text);
            return refusesYear(day, complaint) ? null : day;
        } catch (DateTimeException e) {
            complaint.wrong("is a day that there is not", DAY_EXAMPLE);
            return null;
        }
    }

    private static boolean refusesYear(LocalDate day, Complaint complaint) {
        boolean odd = day.getYear() < FIRST_YEAR || day.getYear() > LAST_YEAR;
        if (odd) {
            complaint.wrong(
                    "is in the year " + day.getYear(),
                    "years are " + FIRST_YEAR + " to " + LAST_YEAR);
        }
        return odd;
    }

    private static boolean refusesNumber(Cell cell, Complaint complaint) {
        boolean number = cell.form() == Cell.Form.NUMBER || cell.form() == Cell.Form.SHAPED_NUMBER;
        if (number) {
            complaint.wrong(
                    "is a number and not a date cell",
                    "format the column as date and time, or write it as text");
        }
        return number;
    }
}
