package counterbench.review.store;

import static counterbench.db.generated.Tables.ACKNOWLEDGEMENTS_FACT;
import static counterbench.db.generated.Tables.CLAIMS_FACT;
import static counterbench.db.generated.Tables.CORE_TAG;
import static counterbench.db.generated.Tables.CREDITS_FACT;
import static counterbench.db.generated.Tables.ISSUES_FACT;
import static counterbench.db.generated.Tables.KITS_FACT;

import counterbench.campaign.Packs;
import counterbench.claims.Credit;
import counterbench.claims.CreditFacts;
import counterbench.cores.Acknowledgement;
import counterbench.cores.CoreEvent;
import counterbench.db.JobKey;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.store.FactTable;
import counterbench.shared.Address;
import counterbench.shared.Site;
import counterbench.stock.Account;
import counterbench.stock.Count;
import counterbench.stock.Issue;
import counterbench.stock.Kit;
import counterbench.stock.LedgerFacts;
import counterbench.stock.Receipt;
import counterbench.stock.ReceivedKit;
import counterbench.stock.StockEvent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;

/**
 * Facts of a site that belong to no job: the store, kits apart from jobs, and credits of no claim.
 */
final class SiteFacts {
    private final DSLContext sql;
    private final Site site;
    private final Visible visible;
    private final FactReader reader;
    private final Packs packs;
    private final CreditMatches matches;
    private final List<Receipt> receipts;
    private final List<Acknowledgement> ofWholeShipments;
    private final List<StockEvent> looseEvents = new ArrayList<>();
    private final List<Count> looseCounts = new ArrayList<>();
    private final Map<String, List<StockEvent>> eventsOfKit = new HashMap<>();
    private final Map<String, List<Count>> countsOfKit = new HashMap<>();

    SiteFacts(
            DSLContext sql,
            Site site,
            Visible visible,
            FactReader reader,
            Packs packs,
            CreditMatches matches) {
        this.matches = matches;
        this.sql = sql;
        this.site = site;
        this.visible = visible;
        this.reader = reader;
        this.packs = packs;
        this.receipts = read(FactKind.RECEIPTS, DSL.noCondition(), reader::receipt);
        this.ofWholeShipments =
                read(
                        FactKind.ACKNOWLEDGEMENTS,
                        ACKNOWLEDGEMENTS_FACT
                                .CORE
                                .isNull()
                                .and(ACKNOWLEDGEMENTS_FACT.SERIAL.isNull()),
                        reader::acknowledgement);
        read(FactKind.MOVES, DSL.noCondition(), reader::event).forEach(this::add);
        read(FactKind.COUNTS, DSL.noCondition(), reader::count).forEach(this::add);
    }

    private void add(StockEvent event) {
        List<StockEvent> events =
                event.kit() == null
                        ? looseEvents
                        : eventsOfKit.computeIfAbsent(event.kit(), k -> new ArrayList<>());
        events.add(event);
    }

    private void add(Count count) {
        List<Count> counts =
                count.kit() == null
                        ? looseCounts
                        : countsOfKit.computeIfAbsent(count.kit(), k -> new ArrayList<>());
        counts.add(count);
    }

    private <T> List<T> read(
            FactKind kind, Condition where, BiFunction<Address, FactRow, Optional<T>> reading) {
        FactTable table = FactTable.of(kind);
        return sql
                .selectFrom(table.table())
                .where(table.siteNo().eq((short) site.no()).and(where))
                .orderBy(table.batch(), table.line())
                .fetch()
                .stream()
                .flatMap(r -> read(table, r, reading).stream())
                .toList();
    }

    private <T> Optional<T> read(
            FactTable table, Record row, BiFunction<Address, FactRow, Optional<T>> reading) {
        return visible.address(table, row).flatMap(a -> reading.apply(a, table.row(row)));
    }

    /**
     * The return centre's rows that speak of whole shipments, for those that some core events name.
     */
    List<Acknowledgement> ofWholeShipments(List<CoreEvent> events) {
        return ofWholeShipments.stream()
                .filter(row -> events.stream().anyMatch(e -> row.shipment().equals(e.shipment())))
                .toList();
    }

    List<Receipt> receipts() {
        return receipts;
    }

    List<StockEvent> eventsOf(String kit) {
        return eventsOfKit.getOrDefault(kit, List.of());
    }

    List<Count> countsOf(String kit) {
        return countsOfKit.getOrDefault(kit, List.of());
    }

    List<Count> looseCounts() {
        return looseCounts;
    }

    /** The kits that stock events or counts name. */
    List<String> kitsWithEvents() {
        List<String> kits = new ArrayList<>(eventsOfKit.keySet());
        countsOfKit.keySet().stream().filter(k -> !eventsOfKit.containsKey(k)).forEach(kits::add);
        kits.sort(null);
        return kits;
    }

    /** Loose parts that were issued to jobs, of those that are named. */
    List<Issue> looseIssues(Collection<String> parts) {
        List<Issue> issues = new ArrayList<>();
        Condition ofSite =
                ISSUES_FACT.K.between(JobKey.firstOf(site.no()), JobKey.lastOf(site.no()));
        Chunks.each(
                parts,
                some ->
                        issues.addAll(
                                read(
                                        FactKind.ISSUES,
                                        ofSite.and(ISSUES_FACT.PART.in(some)),
                                        reader::issue)));
        return issues;
    }

    /** The facts of the store alone. */
    LedgerFacts storeOnly() {
        return new LedgerFacts(
                List.of(),
                List.of(),
                receipts,
                List.of(),
                List.of(),
                looseEvents,
                looseCounts,
                List.of());
    }

    /** A kit with its contents by the pack. */
    ReceivedKit received(Kit kit) {
        return new ReceivedKit(
                kit,
                packs.kit(kit.kitPart(), kit.revision(), site.dayOf(kit.receivedAt()))
                        .orElse(null));
    }

    /**
     * A kit that arrived from another site, as that site received it; of one whose receipt the
     * store does not hold, nothing is known but that it came.
     */
    Optional<ReceivedKit> arriving(String kit) {
        return eventsOf(kit).stream()
                .filter(e -> e.kind() == StockEvent.Kind.ARRIVED)
                .min(Comparator.comparing(StockEvent::at))
                .map(arrival -> atAnotherSite(kit).orElseGet(() -> onlyArrived(kit, arrival)))
                .map(this::received);
    }

    private static Kit onlyArrived(String kit, StockEvent arrival) {
        return new Kit(
                arrival.address(),
                kit,
                Account.NOT_SAID,
                arrival.at(),
                null,
                null,
                null,
                null,
                List.of());
    }

    private Optional<Kit> atAnotherSite(String kit) {
        FactTable table = FactTable.of(FactKind.KITS);
        return sql
                .selectFrom(KITS_FACT)
                .where(KITS_FACT.KIT.eq(kit), KITS_FACT.SITE_NO.ne((short) site.no()))
                .orderBy(KITS_FACT.BATCH, KITS_FACT.LINE)
                .fetch()
                .stream()
                .flatMap(r -> read(table, r, reader::kit).stream())
                .findFirst();
    }

    /**
     * Gives each credit that names no claim, or one that is not there, with the core that it names.
     */
    void eachCreditOfNoClaim(Consumer<CreditFacts> credits) {
        Condition none =
                DSL.notExists(
                        DSL.selectOne()
                                .from(CLAIMS_FACT)
                                .where(
                                        CLAIMS_FACT.SITE_NO.eq(CREDITS_FACT.SITE_NO),
                                        CLAIMS_FACT.CLAIM.eq(CREDITS_FACT.CLAIM)));
        FactTable table = FactTable.of(FactKind.CREDITS);
        KeyRuns.each(
                sql.selectFrom(CREDITS_FACT)
                        .where(CREDITS_FACT.SITE_NO.eq((short) site.no()).and(none))
                        .orderBy(CREDITS_FACT.REMITTANCE, CREDITS_FACT.REMITTANCE_LINE),
                r -> r.get(CREDITS_FACT.REMITTANCE) + " " + r.get(CREDITS_FACT.REMITTANCE_LINE),
                rows ->
                        Keyed.merge(table, rows, visible).stream()
                                .flatMap(k -> reader.credit(k.address(), k.row()).stream())
                                .filter(c -> !matches.isMatched(c))
                                .map(c -> new CreditFacts(site, c, null, knownCore(c)))
                                .forEach(credits));
    }

    private @Nullable String knownCore(Credit credit) {
        Condition named =
                credit.core() != null
                        ? CORE_TAG.CORE.eq(credit.core())
                        : CORE_TAG.SERIAL.eq(String.valueOf(credit.serial()));
        return sql.select(CORE_TAG.CORE)
                .from(CORE_TAG)
                .where(CORE_TAG.SITE_NO.eq((short) site.no()).and(named))
                .limit(1)
                .fetchOne(CORE_TAG.CORE);
    }

    /** Acknowledgements of cores and serials that were never removed here. */
    List<Acknowledgement> acknowledgementsOfNoCore() {
        Condition known =
                DSL.exists(
                        DSL.selectOne()
                                .from(CORE_TAG)
                                .where(
                                        CORE_TAG.SITE_NO.eq(ACKNOWLEDGEMENTS_FACT.SITE_NO),
                                        CORE_TAG.CORE
                                                .eq(ACKNOWLEDGEMENTS_FACT.CORE)
                                                .or(
                                                        ACKNOWLEDGEMENTS_FACT
                                                                .CORE
                                                                .isNull()
                                                                .and(
                                                                        CORE_TAG.SERIAL.eq(
                                                                                ACKNOWLEDGEMENTS_FACT
                                                                                        .SERIAL)))));
        return read(FactKind.ACKNOWLEDGEMENTS, DSL.not(known), reader::acknowledgement).stream()
                .filter(row -> row.core() != null || row.serial() != null)
                .toList();
    }
}
