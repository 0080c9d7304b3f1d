package counterbench.acts;

/** Where a kit as a whole is. */
public enum KitPlace {
    /** Something is in its box here, so that it can be issued or sent. */
    ON_SHELF,
    /** Handed to a job. */
    ISSUED,
    /** On the way to another site, or there. */
    SENT,
    /** Back at the supplier's. */
    RETURNED,
    /** Thrown away. */
    SCRAPPED,
    /** Not there when it was counted. */
    MISSING,
    /** In none of these places, and nothing is in its box. */
    EMPTY
}
