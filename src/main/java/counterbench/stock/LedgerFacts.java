package counterbench.stock;

import java.util.List;

/**
 * The facts from which moves follow, in any order: all of a site, or of one component, which is a
 * set of jobs and kits that no issue and no use links with any other (see {@link Components}).
 *
 * @param kits kits received at the site
 * @param arriving kits received at another site that arrive here, as they are when they arrive
 * @param receipts loose parts received
 * @param issues kits and loose parts issued
 * @param uses what became of hardware on jobs; plugs bear the tag of their core where it is known
 * @param events what happened to kits and loose parts apart from jobs
 * @param counts counts; those of loose parts are {@link StoreTimeline}'s, not the ledger's
 * @param ends jobs that were completed
 */
public record LedgerFacts(
        List<ReceivedKit> kits,
        List<ReceivedKit> arriving,
        List<Receipt> receipts,
        List<Issue> issues,
        List<Use> uses,
        List<StockEvent> events,
        List<Count> counts,
        List<JobEnd> ends) {
    /** No facts at all. */
    public static final LedgerFacts NONE =
            new LedgerFacts(
                    List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                    List.of());

    /** Issues alone. */
    public static LedgerFacts ofIssues(List<Issue> issues) {
        return new LedgerFacts(
                List.of(), List.of(), List.of(), issues, List.of(), List.of(), List.of(),
                List.of());
    }

    public LedgerFacts {
        kits = List.copyOf(kits);
        arriving = List.copyOf(arriving);
        receipts = List.copyOf(receipts);
        issues = List.copyOf(issues);
        uses = List.copyOf(uses);
        events = List.copyOf(events);
        counts = List.copyOf(counts);
        ends = List.copyOf(ends);
    }

    /** The same with other jobs completed. */
    public LedgerFacts withEnds(List<JobEnd> others) {
        return new LedgerFacts(kits, arriving, receipts, issues, uses, events, counts, others);
    }
}
