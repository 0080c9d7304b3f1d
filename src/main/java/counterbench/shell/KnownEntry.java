package counterbench.shell;

import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.journal.store.EntryReader;
import counterbench.review.store.ReviewSite;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.util.List;

/** {@code --known ENTRY}: what was known when that entry was the newest of its site. */
public final class KnownEntry {
    /** The option. */
    public static final Option<Long> OPTION =
            Option.of("known", "ENTRY", Readings.WHOLE_NUMBER, "as if that entry were the newest");

    private KnownEntry() {}

    /**
     * The number of the entry that a line names, 0 for the time before the first; the newest there
     * will ever be where it names none.
     *
     * @throws Refused if the site has no such entry
     */
    public static long of(Invocation in, Store store, Site site) {
        if (!in.has(OPTION)) {
            return ReviewSite.NEWEST;
        }
        long number = in.get(OPTION);
        List<Entry> newest = store.read(sql -> EntryReader.newest(sql, site.no(), 1));
        long last = newest.isEmpty() ? 0 : newest.get(0).number();
        if (number > last) {
            throw new Refused(
                    "--known \"" + number + "\"",
                    "site " + site.site() + " ends with entry " + last,
                    "journal show lists the newest");
        }
        return number;
    }
}
