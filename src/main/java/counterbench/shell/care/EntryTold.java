package counterbench.shell.care;

import counterbench.journal.Entry;
import counterbench.journal.store.JournalBook;
import counterbench.shared.Refused;
import counterbench.shared.Site;

/** An entry, as a person is told of it. */
final class EntryTold {
    private EntryTold() {}

    /** Which it is, when and by whom it was recorded, and the line or paper that it came from. */
    static String words(Site site, Entry entry) {
        return "entry "
                + entry.number()
                + " of site "
                + site.site()
                + ", "
                + FactText.local(site, entry.recordedAt())
                + ", "
                + entry.person()
                + ": "
                + entry.source();
    }

    /**
     * The entry of that number.
     *
     * @throws Refused if the site has none
     */
    static JournalBook.Listed find(JournalBook book, Site site, long number) {
        return book.find(site, number)
                .orElseThrow(
                        () ->
                                new Refused(
                                        "entry \"" + number + "\"",
                                        "site " + site.site() + " has no such entry",
                                        "journal show lists the newest"));
    }
}
