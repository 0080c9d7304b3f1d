package counterbench.sheets.report;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A workbook to be written.
 *
 * @param subject what it is about: {@code North garage, March 2026}
 * @param zone the time zone of the site, in which instants are shown
 * @param currency what its money is counted in
 * @param madeAt when it was made
 * @param rows the rows of each sheet, by what the program calls it; a sheet without stays empty
 * @param notes what the Notes sheet says first
 */
public record Report(
        ReportLayout layout,
        String subject,
        ZoneId zone,
        Currency currency,
        Instant madeAt,
        Map<String, ReportRows> rows,
        List<Note> notes) {
    /** A line of the Notes sheet: what is told, and what there is to say of it. */
    public record Note(String label, String text) {
        public Note {
            Objects.requireNonNull(label, "label");
            Objects.requireNonNull(text, "text");
        }
    }

    public Report {
        Objects.requireNonNull(layout, "layout");
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(currency, "currency");
        Objects.requireNonNull(madeAt, "madeAt");
        rows = Map.copyOf(rows);
        notes = List.copyOf(notes);
    }
}
