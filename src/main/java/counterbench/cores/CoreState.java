package counterbench.cores;

import java.util.Locale;

/** How far a core has come, in the order of its life. */
public enum CoreState {
    REMOVED,
    DRAINING,
    DRAINED,
    PLUGGED,
    PACKED,
    /** On the way from one of the workshop's sites to another. */
    IN_TRANSIT,
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
