package counterbench.shell.people;

import counterbench.journal.Entry;
import counterbench.shared.Site;

/** Says where an act stands in the journal. */
final class Told {
    private Told() {}

    static String entry(Site site, Entry entry) {
        return "entry " + entry.number() + " of site " + site.site();
    }
}
