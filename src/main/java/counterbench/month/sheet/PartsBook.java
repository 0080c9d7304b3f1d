package counterbench.month.sheet;

import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.SubjectKind;
import counterbench.month.MonthAccount;
import counterbench.review.Component;
import counterbench.review.HardwareOfJobs;
import counterbench.review.JudgedComponent;
import counterbench.review.Settlement;
import counterbench.review.Terms;
import counterbench.sheets.report.ReportRows;
import counterbench.spool.SpooledRows;
import counterbench.stock.Account;
import counterbench.stock.Count;
import counterbench.stock.Ledger;
import counterbench.stock.LedgerFacts;
import counterbench.stock.Move;
import counterbench.stock.StoreTimeline;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Gathers the rows of the monthly parts workbook. */
public final class PartsBook implements Book {
    private static final Set<Rule> OF_HARDWARE =
            EnumSet.of(
                    Rule.REUSED_HARDWARE,
                    Rule.HARDWARE_SHORT,
                    Rule.HARDWARE_OVER,
                    Rule.MATCHED_SET_SPLIT,
                    Rule.EXPIRED_WHEN_USED,
                    Rule.KIT_UNKNOWN,
                    Rule.KIT_OF_ANOTHER_JOB,
                    Rule.LEFT_ON_BENCH,
                    Rule.CONDITION_UNKNOWN);

    private final MonthAccount account;
    private final HardwareOfJobs hardware;
    private final TableRows tables;
    private final SpooledRows movementRows = new SpooledRows();
    private final SpooledRows kitRows = new SpooledRows();
    private final SpooledRows expiryRows = new SpooledRows();
    private final SpooledRows countRows = new SpooledRows();
    private final SpooledRows findingRows = new SpooledRows();
    private final MovementsSheet movements;
    private final KitsSheet kits;
    private final ExpirySheet expiry;
    private final CountsSheet counts;
    private final FindingsSheet findings;
    private final List<Move> storeMoves = new ArrayList<>();

    /**
     * @param asOf as of when the site is read
     */
    public PartsBook(SiteMonth period, Terms terms, PartNames names, Instant asOf) {
        account = new MonthAccount(period.site(), period.month(), terms.packs(), period.sealed());
        hardware = new HardwareOfJobs(period.site(), terms, asOf);
        tables = new TableRows(names);
        movements = new MovementsSheet(period, names, movementRows);
        kits = new KitsSheet(period, kitRows);
        expiry = new ExpirySheet(period, terms, names, expiryRows);
        counts = new CountsSheet(period, names, countRows);
        findings = new FindingsSheet(PartsBook::isOfParts, findingRows);
    }

    private static boolean isOfParts(Finding finding) {
        SubjectKind about = finding.subject().kind();
        return about == SubjectKind.KIT
                || about == SubjectKind.ACCOUNT
                || OF_HARDWARE.contains(finding.rule());
    }

    @Override
    public void add(JudgedComponent judged) {
        Component component = judged.component();
        LedgerFacts facts = component.facts();
        Ledger ledger = judged.ledger();
        account.addComponent(ledger, hardware.completed(component, ledger), facts.ends());
        kits.add(facts, ledger);
        counts.add(facts.counts(), ledger.differences());
        addMoves(facts, ledger.moves());
    }

    /** The account of the month, whose opening a sealed month before gives. */
    public MonthAccount account() {
        return account;
    }

    /** Takes a movement of a sealed month that was taken back since. */
    public void addTakenBack(Move move) {
        movements.addTakenBack(move);
    }

    private void addMoves(LedgerFacts facts, List<Move> moves) {
        movements.add(moves, facts);
        expiry.add(facts, moves);
        moves.stream().filter(m -> m.touches(Account.STORE)).forEach(storeMoves::add);
    }

    @Override
    public void end(LedgerFacts storeOnly, Collection<Count> looseCounts) {
        Ledger store = Ledger.of(storeOnly);
        account.addStore(store, looseCounts);
        addMoves(storeOnly, store.moves());
        Collection<StoreTimeline> timelines = StoreTimeline.ofAll(storeMoves, looseCounts).values();
        timelines.forEach(timeline -> addMoves(storeOnly, timeline.countMoves()));
        counts.add(looseCounts, timelines.stream().flatMap(t -> t.differences().stream()).toList());
        expiry.end();
    }

    @Override
    public void add(Finding finding, @Nullable Settlement settled, boolean counts) {
        if (counts) {
            findings.add(finding, settled);
        }
    }

    @Override
    public Map<String, ReportRows> rows() {
        return Map.of(
                "Balance", ReportRows.of(tables.balance(account)),
                "Consumption", ReportRows.of(tables.consumption(account)),
                "Movements", movementRows::each,
                "Kits", kitRows::each,
                "Expiry", expiryRows::each,
                "Counts", countRows::each,
                "Findings", findingRows::each);
    }

    @Override
    public void close() {
        List.of(movementRows, kitRows, expiryRows, countRows, findingRows)
                .forEach(SpooledRows::close);
    }
}
