package counterbench.cores;

import java.util.Locale;

/** How far a core has come, in the order of its life. */
public enum CoreState {
    REMOVED,
    DRAINING,
    DRAINED,
    PLUGGED,
    PACKED,
    ON_SHIPMENT,
    SHIPPED,
    RECEIVED,
    ACCEPTED,
    REJECTED,
    CREDITED;

    /** The word that people and files use, such as {@code on-shipment}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
