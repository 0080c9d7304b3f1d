package counterbench.shared;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A time as people write it: ISO 8601, with an offset or local to the site.
 *
 * @param offset the offset; empty where the time is local to the site
 */
public record WrittenTime(LocalDateTime local, Optional<ZoneOffset> offset) {
    private static final Pattern FORM =
            Pattern.compile(
                    "([0-9]{4}-[0-9]{2}-[0-9]{2})[Tt ]"
                            + "([0-9]{2}:[0-9]{2}(?::[0-9]{2}(?:\\.[0-9]{1,9})?)?)"
                            + " ?([Zz]|[+-][0-9]{2}(?::?[0-9]{2})?)?");

    /** The time that a text names, or empty if it names none. */
    public static Optional<WrittenTime> of(String text) {
        Matcher parts = FORM.matcher(text.strip());
        if (!parts.matches()) {
            return Optional.empty();
        }
        try {
            LocalDate day = LocalDate.parse(parts.group(1));
            LocalDateTime local = day.atTime(LocalTime.parse(parts.group(2)));
            return Optional.of(
                    new WrittenTime(
                            local, Optional.ofNullable(parts.group(3)).map(WrittenTime::offsetOf)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** Whether a text is written as a time is, even one that there is not, such as 25:00. */
    public static boolean hasForm(String text) {
        return FORM.matcher(text.strip()).matches();
    }

    private static ZoneOffset offsetOf(String text) {
        return text.equalsIgnoreCase("Z") ? ZoneOffset.UTC : ZoneOffset.of(text);
    }

    /**
     * The instant meant, cut to microseconds as the store holds it.
     *
     * @param zone the site's, for local times
     * @throws Refused if the zone's clocks skip the local time or show it twice
     */
    public Instant at(ZoneId zone) {
        List<ZoneOffset> offsets =
                offset.map(List::of).orElseGet(() -> zone.getRules().getValidOffsets(local));
        if (offsets.size() == 1) {
            return local.toInstant(offsets.get(0)).truncatedTo(ChronoUnit.MICROS);
        }
        throw new Refused(
                "time \"" + local.toString().replace('T', ' ') + "\"",
                offsets.isEmpty()
                        ? "did not exist in " + zone + ", where clocks went forward over it"
                        : "was there twice in " + zone + ", where clocks went back",
                "add the offset" + meant(offsets));
    }

    private String meant(List<ZoneOffset> offsets) {
        return offsets.isEmpty()
                ? ""
                : offsets.stream()
                        .map(o -> local.atOffset(o).toString())
                        .collect(Collectors.joining(" or ", ": ", ""));
    }
}
