package counterbench.shell.care;

import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.journal.store.JournalBook;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Options;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.print.Column;
import counterbench.shell.print.Format;
import counterbench.shell.print.Rows;
import java.util.List;
import java.util.function.Supplier;

/** Shows the newest entries of the journal, or the facts of one. */
public final class JournalShowCommand extends BaseCommand {
    private static final Argument<Long> ENTRY =
            Argument.of("ENTRY", Readings.WHOLE_NUMBER, "the entry whose facts to show")
                    .asOptional();
    private static final Option<Long> LAST =
            Option.of("last", "COUNT", Readings.WHOLE_NUMBER, "how many entries, 20 unless said");

    private static final Option<Long> FROM =
            Option.of(
                    "from", "LINE", Readings.WHOLE_NUMBER, "the first fact to show; 1 unless said");
    private static final Option<Boolean> ALL =
            Option.flag("all", "all facts of the entry, however many");

    /** How many facts of one entry a table shows at once. */
    private static final int PAGE = 100;

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public JournalShowCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("journal show", Group.FILES_AND_CARE, "Show the newest entries, or one")
                        .takes(ENTRY, LAST, FROM, ALL, Options.SITE)
                        .printsRows()
                        .example("journal show")
                        .example("journal show 12")
                        .example("journal show 12 --from 101")
                        .note(
                                "Entries stand newest first, at the site's local time. A fact is"
                                        + " known by its entry and line, such as 12.3.\nA table"
                                        + " shows "
                                        + PAGE
                                        + " facts of an entry at once, json and csv all of"
                                        + " them."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        JournalBook book = new JournalBook(store.get());
        if (in.has(ENTRY)) {
            if (in.has(LAST)) {
                throw in.wrong("--last is for the list of entries; leave it or the entry out");
            }
            facts(in, site, book, in.get(ENTRY));
        } else if (in.has(FROM) || in.has(ALL)) {
            throw in.wrong("--from and --all are for the facts of one entry; say which");
        } else {
            long last = in.find(LAST).orElse(20L);
            if (last < 1) {
                throw in.wrong("--last \"" + last + "\" is below 1; say how many entries");
            }
            entries(in, site, book.newest(site, (int) Math.min(last, Integer.MAX_VALUE)));
        }
        return Status.DONE;
    }

    private static void entries(Invocation in, Site site, List<JournalBook.Listed> entries) {
        try (Rows rows =
                in.rows(
                        Column.number("entry"),
                        Column.text("recorded_at").withRoomFor(FactText.LOCAL_WIDTH),
                        Column.text("person"),
                        Column.text("kind"),
                        Column.number("facts"),
                        Column.text("source"),
                        Column.text("state"))) {
            for (JournalBook.Listed listed : entries) {
                Entry entry = listed.entry();
                rows.add(
                        entry.number(),
                        FactText.local(site, entry.recordedAt()),
                        entry.person(),
                        entry.kind(),
                        entry.factCount(),
                        entry.source(),
                        state(listed));
            }
        }
    }

    private static String state(JournalBook.Listed listed) {
        if (listed.reversedBy().isPresent()) {
            return "reversed by " + listed.reversedBy().get();
        }
        if (listed.reversedLines() > 0) {
            return listed.reversedLines() + " of its facts reversed";
        }
        Long reverses = listed.entry().reverses();
        return reverses == null ? "" : "reverses " + reverses;
    }

    private static void facts(Invocation in, Site site, JournalBook book, long number) {
        JournalBook.Listed listed = EntryTold.find(book, site, number);
        Entry entry = listed.entry();
        JournalBook.Range range = range(in, entry);
        in.tell(
                EntryTold.words(site, entry)
                        + (state(listed).isEmpty() ? "" : " (" + state(listed) + ")"));
        in.tell("hash " + entry.hash());
        String longest = number + "." + entry.factCount();
        try (Rows rows =
                in.rows(
                        Column.text("fact").withRoomFor(longest.length()),
                        Column.text("kind"),
                        Column.text("said"),
                        Column.text("booked"),
                        Column.text("state"))) {
            book.facts(
                    entry,
                    range,
                    line ->
                            rows.add(
                                    line.address(),
                                    line.row().kind().word(),
                                    FactText.said(site, line.row()),
                                    line.booked(),
                                    line.reversedBy().map(by -> "reversed by " + by).orElse("")));
        }
        if (range.last() < entry.factCount()) {
            in.tell(
                    "facts %d to %d of %d; for the next: journal show %d --from %d, for all: --all"
                            .formatted(
                                    range.first(),
                                    range.last(),
                                    entry.factCount(),
                                    number,
                                    range.last() + 1));
        }
    }

    /** Those asked for; programs, whose rows nobody has to look through, get all from there on. */
    private static JournalBook.Range range(Invocation in, Entry entry) {
        long first = in.find(FROM).orElse(1L);
        if (first < 1 || first > entry.factCount()) {
            throw new Refused(
                    "--from \"" + first + "\"",
                    "entry " + entry.number() + " has facts 1 to " + entry.factCount(),
                    "say one of these");
        }
        boolean isWhole = in.has(ALL) || in.format() != Format.TABLE;
        return new JournalBook.Range(
                (int) first, isWhole ? Integer.MAX_VALUE : (int) first + PAGE - 1);
    }
}
