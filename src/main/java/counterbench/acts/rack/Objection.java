package counterbench.acts.rack;

import counterbench.acts.CoreCase;
import counterbench.campaign.CoreTerms;
import counterbench.cores.CoreHistory;
import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.review.FindingId;
import counterbench.shared.Minutes;

/** An open finding of severity stop that stands against the shipping of a core. */
public record Objection(CoreCase core, Finding finding) {
    /** What was found, and what puts it right. */
    public String words() {
        return finding.message() + " (" + finding.rule().word() + "); " + remedy();
    }

    /** What puts it right, as commands. */
    public String remedy() {
        String tag = core.core().core();
        return switch (finding.rule()) {
            case DRAIN_NOT_LOGGED, DRAIN_SHORT -> drainAgain(core.core(), tag);
            case PLUGS_SHORT -> "close what is open and record it: plug " + tag;
            default ->
                    "put right what was found, then the lead settles it: finding settle "
                            + FindingId.of(finding);
        };
    }

    private String drainAgain(CoreHistory history, String tag) {
        String minutes =
                core.terms().map(CoreTerms::drainMinutes).map(Minutes::text).orElse("as asked");
        String open = history.plugs() > 0 ? "unplug " + tag + ", " : "";
        String logged =
                finding.rule() == Rule.DRAIN_NOT_LOGGED
                        ? ", or record with --at the drain that was not written down"
                        : "";
        return open + "drain it for " + minutes + " (drain begin, drain end), plug " + tag + logged;
    }
}
