package counterbench.shell.acts;

import counterbench.acts.store.RecordAct;
import counterbench.journal.Entry;
import counterbench.judgement.Finding;
import counterbench.shared.Site;
import java.util.List;
import java.util.stream.Stream;

/** What a person is told of an act that was recorded. */
public final class ActTold {
    private ActTold() {}

    /** Where it stands in the journal. */
    public static String where(Site site, Entry entry) {
        return "entry " + entry.number() + " of site " + site.site();
    }

    /** Remarks, then each finding that it raises or will raise, a line each. */
    public static List<String> besides(RecordAct.Recorded recorded) {
        return Stream.concat(
                        recorded.remarks().stream(), recorded.raised().stream().map(ActTold::of))
                .toList();
    }

    /** A finding, in a line. */
    public static String of(Finding finding) {
        return finding.rule().severity().word()
                + " "
                + finding.rule().word()
                + ": "
                + finding.message();
    }
}
