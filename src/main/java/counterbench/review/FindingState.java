package counterbench.review;

import java.util.Locale;

/** Whether somebody has to look at a finding. */
public enum FindingState {
    /** Nobody has settled it on the evidence that it has now. */
    OPEN,
    /** A person has settled it, with a reason. */
    SETTLED;

    /** The word that people and files use. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
