package counterbench.cores;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One difference between the return centre's sheet and a shipment as it was sent.
 *
 * @param theirs the core or serial as they wrote it; null where they wrote nothing
 * @param ours the core of ours that it may be, or that they do not name; null where none comes near
 * @param why what speaks for it, such as {@code same serial}
 */
public record Difference(Kind kind, @Nullable String theirs, @Nullable String ours, String why) {
    /** What differs. */
    public enum Kind {
        /** They name what is not on the shipment. */
        NOT_ON_OURS,
        /** They name a core of the shipment with another serial. */
        OTHER_SERIAL,
        /** A core of the shipment that they name under one that it was never on. */
        ELSEWHERE,
        /** A core of the shipment that they do not name, though they named others. */
        NOT_ON_THEIRS
    }

    public Difference {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(why, "why");
    }

    /** The sentence that a person reads. Nothing is taken for granted: it asks. */
    public String words() {
        return switch (kind) {
            case NOT_ON_OURS ->
                    "on their sheet and not on ours: "
                            + theirs
                            + (ours == null ? "; " + why : "; is it " + ours + "? (" + why + ")");
            case OTHER_SERIAL -> "core " + ours + " bears another serial with them: " + why;
            case ELSEWHERE -> "core " + ours + " is named under " + theirs + ": " + why;
            case NOT_ON_THEIRS -> "on our sheet and not on theirs: core " + ours + why;
        };
    }
}
