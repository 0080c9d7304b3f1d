package counterbench.stock;

import counterbench.campaign.Condition;
import counterbench.campaign.KitLine;
import counterbench.campaign.KitTerms;
import counterbench.campaign.PartUnit;
import counterbench.shared.Address;
import counterbench.shared.Quantity;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Paper for tests, written row by row; every row gets the next line of the journal, and unless
 * {@link #at} says otherwise the next hour.
 */
public final class StockPaper {
    /** When the first row happens. */
    public static final Instant START = Instant.parse("2026-03-02T08:00:00Z");

    private Instant now = START;
    private int line;
    private boolean clockStands;
    public final List<ReceivedKit> kits = new ArrayList<>();
    public final List<ReceivedKit> arriving = new ArrayList<>();
    public final List<Receipt> receipts = new ArrayList<>();
    public final List<Issue> issues = new ArrayList<>();
    public final List<Use> uses = new ArrayList<>();
    public final List<StockEvent> events = new ArrayList<>();
    public final List<Count> counts = new ArrayList<>();
    public final List<JobEnd> ends = new ArrayList<>();

    /** The kit of the invented campaign: a pump, a bolt, four washers, sealant and five plugs. */
    public static KitTerms terms() {
        return new KitTerms(
                "QM-4470-K",
                1,
                Condition.ALWAYS,
                List.of(
                        line("QM-4471", PartUnit.EACH, "1", false),
                        line("QM-4472", PartUnit.EACH, "1", false),
                        line("QM-4473", PartUnit.EACH, "4", false),
                        line("QM-4475", PartUnit.ML, "3.5", false),
                        line("QM-4476", PartUnit.EACH, "5", true)));
    }

    private static KitLine line(String part, PartUnit unit, String quantity, boolean onCore) {
        Quantity q = Quantity.of(quantity);
        return new KitLine(
                part,
                "Part " + part,
                unit,
                q,
                q,
                false,
                false,
                false,
                onCore,
                List.of(),
                BigDecimal.ZERO,
                Condition.ALWAYS);
    }

    /** The rows that follow happen at that moment, all of them. */
    public StockPaper at(String moment) {
        now = Instant.parse(moment);
        clockStands = true;
        return this;
    }

    /** Where the last row stands. */
    public Address last() {
        return new Address(1, line);
    }

    private Address next() {
        line++;
        return last();
    }

    private Instant tick() {
        if (!clockStands) {
            now = now.plus(Duration.ofHours(1));
        }
        return now;
    }

    public StockPaper kit(String serial, String... missing) {
        kits.add(new ReceivedKit(kitRow(serial, missing), terms()));
        return this;
    }

    public StockPaper kitThatNoPackKnows(String serial) {
        kits.add(new ReceivedKit(kitRow(serial), null));
        return this;
    }

    public StockPaper kitOfAnotherSite(String serial) {
        arriving.add(new ReceivedKit(kitRow(serial), terms()));
        return this;
    }

    private Kit kitRow(String serial, String... missing) {
        List<PartQuantity> without = new ArrayList<>();
        for (String m : missing) {
            String[] both = m.split(":", 2);
            without.add(new PartQuantity(both[0], Quantity.of(both[1])));
        }
        return new Kit(next(), serial, "QM-4470-K", tick(), null, null, null, null, without);
    }

    public StockPaper receipt(String part, String quantity, @Nullable String lot) {
        receipts.add(new Receipt(next(), part, Quantity.of(quantity), tick(), lot, null, null));
        return this;
    }

    public StockPaper issueKit(String kit, String job) {
        issues.add(new Issue(next(), job, tick(), kit, null, null, null));
        return this;
    }

    public StockPaper issuePart(String part, String quantity, @Nullable String lot, String job) {
        issues.add(new Issue(next(), job, tick(), null, part, Quantity.of(quantity), lot));
        return this;
    }

    public StockPaper use(String job, String part, String quantity, Use.Condition condition) {
        return use(job, part, quantity, condition, null);
    }

    public StockPaper use(
            String job,
            String part,
            String quantity,
            Use.Condition condition,
            @Nullable String kit) {
        return use(job, part, quantity, condition, kit, null, null);
    }

    public StockPaper use(
            String job,
            String part,
            String quantity,
            Use.Condition condition,
            @Nullable String kit,
            @Nullable String core,
            Use.@Nullable Condition was) {
        uses.add(
                new Use(
                        next(),
                        job,
                        part,
                        Quantity.of(quantity),
                        condition,
                        tick(),
                        kit,
                        null,
                        core,
                        was,
                        null,
                        null));
        return this;
    }

    public StockPaper event(
            StockEvent.Kind kind,
            @Nullable String kit,
            @Nullable String part,
            @Nullable String quantity) {
        events.add(
                new StockEvent(
                        next(),
                        kind,
                        tick(),
                        kit,
                        part,
                        quantity == null ? null : Quantity.of(quantity),
                        null,
                        isTransfer(kind) ? "SOUTH" : null));
        return this;
    }

    private static boolean isTransfer(StockEvent.Kind kind) {
        return kind == StockEvent.Kind.SENT || kind == StockEvent.Kind.ARRIVED;
    }

    public StockPaper countKit(String kit, long found) {
        counts.add(new Count(next(), tick(), Quantity.of(found), null, kit));
        return this;
    }

    public StockPaper countPart(String part, String found) {
        counts.add(new Count(next(), tick(), Quantity.of(found), part, null));
        return this;
    }

    public StockPaper complete(String job, String... measured) {
        ends.add(new JobEnd(next(), job, tick(), Set.of(measured)));
        return this;
    }

    public LedgerFacts facts() {
        return new LedgerFacts(kits, arriving, receipts, issues, uses, events, counts, ends);
    }

    public Ledger ledger() {
        return Ledger.of(facts());
    }
}
