package counterbench.facts;

/** The words that cells of some headings hold, where there are many. */
final class Words {
    /** What becomes of hardware on a job. */
    static final String[] OF_USES = {
        "new", "reused", "taken-off", "scrapped", "put-back", "on-core"
    };

    /** What happens to a core. */
    static final String[] OF_CORES = {
        "removed",
        "drain-begun",
        "drain-ended",
        "plugged",
        "unplugged",
        "packed",
        "added",
        "taken-off",
        "shipped",
        "received",
        "accepted",
        "rejected",
        "sent",
        "arrived"
    };

    private Words() {}
}
