package counterbench.month.sheet;

import counterbench.campaign.Pack;
import counterbench.campaign.Packs;
import counterbench.journal.Entry;
import counterbench.shared.Site;
import counterbench.sheets.report.Report;
import java.time.Instant;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What the last sheet of a monthly workbook says first.
 *
 * @param asOf the time of the export; later facts are not in the workbook
 * @param newest the newest entry of the site's journal; null where there is none
 * @param undated how many findings of the site count in no month yet
 */
public record BookNotes(
        BookKind kind,
        SiteMonth period,
        Instant asOf,
        @Nullable Entry newest,
        Packs packs,
        long undated) {
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final DateTimeFormatter MONTH =
            DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH);

    public BookNotes {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(period, "period");
        Objects.requireNonNull(asOf, "asOf");
        Objects.requireNonNull(packs, "packs");
    }

    /** What the workbook is about: {@code North garage, March 2026}. */
    public String subject() {
        return period.site().name() + ", " + MONTH.format(period.month());
    }

    /** The notes, in the order in which they are read. */
    public List<Report.Note> lines() {
        List<Report.Note> lines = new ArrayList<>();
        lines.add(note("Workbook", kind.purpose()));
        lines.add(note("Site", site(period.site())));
        lines.add(note("Month", month(period.month())));
        lines.add(note("As of", local(asOf) + "; what happened later is not in it"));
        if (period.isBeforeEnd(asOf)) {
            lines.add(
                    note(
                            "Not over",
                            "the month is not over: its end is yet to come, and so are its last"
                                    + " facts"));
        }
        period.sealed()
                .of(period.month())
                .ifPresent(
                        seal ->
                                lines.add(
                                        note(
                                                "Sealed",
                                                "by journal entry "
                                                        + seal.entry()
                                                        + "; whenever it is exported, it is the"
                                                        + " same")));
        lines.add(note("Known", known()));
        lines.add(note("Hash", newest == null ? "none" : newest.hash()));
        packs.campaigns().forEach(c -> lines.add(note("Campaign " + c, campaign(c))));
        lines.add(note("Which time", kind.times()));
        lines.add(note("Findings", findings()));
        kind.cautions().forEach(caution -> lines.add(note("Caution", caution)));
        return lines;
    }

    private static Report.Note note(String label, String text) {
        return new Report.Note(label, text);
    }

    private static String site(Site site) {
        return "%s, %s; times of %s, amounts in %s"
                .formatted(
                        site.site(),
                        site.name(),
                        site.zone().getId(),
                        site.currency().getCurrencyCode());
    }

    private static String month(YearMonth month) {
        return "%s, from %s to %s, midnight to midnight at the site"
                .formatted(month, month.atDay(1), month.atEndOfMonth());
    }

    private String known() {
        return newest == null
                ? "the journal has no entry yet"
                : "journal entry %d, recorded %s"
                        .formatted(newest.number(), local(newest.recordedAt()));
    }

    private String local(Instant at) {
        return TIME.format(at.atZone(period.site().zone()));
    }

    private String campaign(String campaign) {
        List<Pack> revisions = packs.revisions(campaign);
        String letters =
                revisions.stream()
                        .map(p -> p.revision() + " from " + p.inForceFrom())
                        .collect(Collectors.joining(", "));
        return revisions.get(revisions.size() - 1).title() + " (revision " + letters + ")";
    }

    private String findings() {
        String none =
                "a finding counts in the month of its job's completion, its kit's receipt, its"
                        + " claim's submission or its credit's payment";
        return undated == 0
                ? none
                : none
                        + "; "
                        + undated
                        + " of the site count in no month yet, and only the command review shows"
                        + " them";
    }
}
