package counterbench.acts.store;

import static counterbench.db.generated.Tables.ENTRY;
import static counterbench.db.generated.Tables.OVERRIDES_FACT;

import counterbench.acts.Named;
import counterbench.acts.ShipmentState;
import counterbench.acts.rack.Ship;
import counterbench.acts.rack.ShipmentPage;
import counterbench.acts.rack.ShipmentPage.Opened;
import counterbench.cores.Acknowledgement;
import counterbench.cores.Difference;
import counterbench.cores.Differences;
import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.journal.store.AllPosted;
import counterbench.journal.store.EntryReader;
import counterbench.judgement.Finding;
import counterbench.judgement.SubjectKind;
import counterbench.labels.LabelledShipment;
import counterbench.labels.gs1.Sscc;
import counterbench.labels.store.LabelBook;
import counterbench.review.FindingState;
import counterbench.review.StatedFinding;
import counterbench.review.store.FindingBook;
import counterbench.review.store.SiteScan;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.LongConsumer;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;

/** Looks up one shipment with all that there is to show of it. */
public final class ReadShipment {
    private final Store store;

    public ReadShipment(Store store) {
        this.store = store;
    }

    /**
     * A shipment as it stands.
     *
     * @param progress is told how many jobs have been judged
     * @throws counterbench.shared.Refused if there is none of that name
     */
    public ShipmentPage run(String shipment, Site site, Instant now, LongConsumer progress) {
        @Nullable Entry newest =
                store.read(sql -> EntryReader.newest(sql, site.no(), 1)).stream()
                        .findFirst()
                        .orElse(null);
        ShipmentState state = state(shipment, site, now);
        return new ShipmentPage(
                site,
                state,
                new LabelBook(store, site)
                        .shipment(shipment)
                        .map(LabelledShipment::sscc)
                        .map(Sscc::digits)
                        .orElse(null),
                store.read(sql -> opened(sql, site, shipment)),
                open(new FindingBook(store).now(site, now, f -> isOf(state, f), progress)),
                differences(state, site, now),
                newest);
    }

    /** What the return centre's sheet and ours do not have alike. */
    public List<Difference> differences(String shipment, Site site, Instant now) {
        return differences(state(shipment, site, now), site, now);
    }

    private ShipmentState state(String shipment, Site site, Instant now) {
        Named named = Named.NOTHING.withShipment(shipment);
        return new ReadSituation(store).run(site, now, named).shipment(shipment);
    }

    private List<Difference> differences(ShipmentState state, Site site, Instant now) {
        List<Acknowledgement> elsewhere =
                state.cores().stream()
                        .flatMap(core -> core.core().acknowledgedElsewhere().stream())
                        .toList();
        try (SiteScan scan = SiteScan.ofJobs(store, site, now, Set.of())) {
            return scan.shipments(List.of(state.name())).stream()
                    .flatMap(facts -> Differences.of(facts, elsewhere).stream())
                    .toList();
        }
    }

    private static boolean isOf(ShipmentState state, Finding finding) {
        return finding.subject().kind() == SubjectKind.CORE
                && state.find(finding.subject().name()).isPresent();
    }

    private static Map<String, List<Finding>> open(List<StatedFinding> findings) {
        Map<String, List<Finding>> open = new TreeMap<>();
        findings.stream()
                .filter(stated -> stated.state() == FindingState.OPEN)
                .map(StatedFinding::finding)
                .forEach(
                        f ->
                                open.computeIfAbsent(f.subject().name(), c -> new ArrayList<>())
                                        .add(f));
        return open;
    }

    private static List<Opened> opened(DSLContext sql, Site site, String shipment) {
        AllPosted posted = new AllPosted(sql);
        List<Opened> opened = new ArrayList<>();
        sql.select(
                        OVERRIDES_FACT.AT,
                        ENTRY.PERSON,
                        OVERRIDES_FACT.REASON,
                        OVERRIDES_FACT.FINDINGS,
                        OVERRIDES_FACT.BATCH,
                        OVERRIDES_FACT.LINE)
                .from(OVERRIDES_FACT)
                .join(ENTRY)
                .on(ENTRY.BATCH.eq(OVERRIDES_FACT.BATCH))
                .where(
                        OVERRIDES_FACT.SITE_NO.eq((short) site.no()),
                        OVERRIDES_FACT.GATE.eq(Ship.GATE),
                        OVERRIDES_FACT.SUBJECT.eq(shipment))
                .orderBy(OVERRIDES_FACT.AT, OVERRIDES_FACT.BATCH, OVERRIDES_FACT.LINE)
                .forEach(
                        r -> {
                            if (posted.counts(site.no(), r.value5(), r.value6())) {
                                opened.add(
                                        new Opened(r.value1(), r.value2(), r.value3(), r.value4()));
                            }
                        });
        return opened;
    }
}
