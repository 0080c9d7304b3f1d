package counterbench.acts.store;

import static counterbench.db.generated.Tables.CORES_FACT;
import static counterbench.db.generated.Tables.CORE_TAG;
import static counterbench.db.generated.Tables.JOB_NAME;
import static counterbench.db.generated.Tables.KIT_LINK;

import counterbench.acts.Named;
import counterbench.acts.Shelf;
import counterbench.acts.Situation;
import counterbench.db.OneByOne;
import counterbench.db.Store;
import counterbench.journal.store.EntryReader;
import counterbench.review.Component;
import counterbench.review.store.JobsOfParts;
import counterbench.review.store.ReviewSite;
import counterbench.review.store.SiteScan;
import counterbench.shared.Site;
import counterbench.stock.Account;
import counterbench.stock.Ledger;
import counterbench.stock.LedgerFacts;
import counterbench.stock.Move;
import counterbench.stock.StoreTimeline;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jooq.DSLContext;

/** Looks up the jobs, kits and loose parts that an act names, with all that concerns them. */
public final class ReadSituation {
    private final Store store;

    public ReadSituation(Store store) {
        this.store = store;
    }

    /** How things stand at a time, with all that is known. */
    public Situation run(Site site, Instant now, Named asked) {
        return run(site, now, ReviewSite.NEWEST, asked);
    }

    /**
     * How things stood at a time.
     *
     * @param known the entry that was the newest; facts of later ones are not read
     */
    public Situation run(Site site, Instant now, long known, Named asked) {
        Named named = asked.withCores(store.read(sql -> onShipments(sql, site, asked)));
        Set<Integer> jobNos = store.read(sql -> jobNos(sql, site, named));
        Set<Integer> puttingBack =
                store.read(sql -> JobsOfParts.puttingBack(sql, site.no(), named.parts()));
        Set<Integer> all = new TreeSet<>(jobNos);
        all.addAll(puttingBack);
        try (SiteScan scan = SiteScan.ofJobs(store, site, now, known, all)) {
            return read(scan, now, named, all);
        }
    }

    /** How things stand now, with what other shells recorded by clocks that are ahead. */
    public Situation latest(Site site, Instant now, Named named) {
        Instant recorded =
                store.read(sql -> EntryReader.latestRecording(sql, site.no())).orElse(now);
        return run(site, recorded.isAfter(now) ? recorded : now, named);
    }

    private Situation read(SiteScan scan, Instant now, Named named, Set<Integer> jobNos) {
        List<Component> wanted = new ArrayList<>();
        List<Move> ofStore = new ArrayList<>();
        Set<String> read = new HashSet<>();
        scan.of(
                jobNos,
                component -> {
                    component.jobs().forEach(job -> read.add(job.name()));
                    if (isNamed(component, named)) {
                        wanted.add(component);
                    }
                    addStoreMoves(Ledger.of(component.facts()), named, ofStore);
                });
        Set<String> loose = new HashSet<>(named.kits());
        wanted.forEach(component -> loose.removeAll(component.kits()));
        scan.looseKits(loose, wanted::add);
        Map<String, Shelf> shelves = new HashMap<>();
        if (!named.parts().isEmpty()) {
            addStoreMoves(Ledger.of(scan.storeOnly()), named, ofStore);
            addStoreMoves(Ledger.of(othersTook(scan, named, read)), named, ofStore);
            shelves.putAll(shelves(scan, named, ofStore));
        }
        return new Situation(
                scan.site(),
                now,
                scan.terms(),
                wanted,
                shelves,
                new JooqDirectory(store, scan.site(), now));
    }

    /** What jobs that need not be read whole took out of the store. */
    private static LedgerFacts othersTook(SiteScan scan, Named named, Set<String> read) {
        return LedgerFacts.ofIssues(
                scan.looseIssues(named.parts()).stream()
                        .filter(issue -> !read.contains(issue.job()))
                        .toList());
    }

    private static boolean isNamed(Component component, Named named) {
        return component.kits().stream().anyMatch(named.kits()::contains)
                || component.jobs().stream().anyMatch(job -> named.jobs().contains(job.name()))
                || component.jobs().stream()
                        .flatMap(job -> job.cores().stream())
                        .anyMatch(core -> named.cores().contains(core.core()));
    }

    private static void addStoreMoves(Ledger ledger, Named named, List<Move> moves) {
        ledger.moves().stream()
                .filter(m -> named.parts().contains(m.part()) && m.touches(Account.STORE))
                .forEach(moves::add);
    }

    private static Map<String, Shelf> shelves(SiteScan scan, Named named, List<Move> moves) {
        Map<String, Shelf> shelves = new HashMap<>();
        for (String part : named.parts()) {
            List<Move> own = moves.stream().filter(m -> m.part().equals(part)).toList();
            StoreTimeline timeline =
                    StoreTimeline.of(
                            part,
                            own,
                            scan.looseCounts().stream()
                                    .filter(count -> part.equals(count.part()))
                                    .toList());
            shelves.put(part, Shelf.of(timeline, own));
        }
        return shelves;
    }

    private static Set<Integer> jobNos(DSLContext sql, Site site, Named named) {
        short siteNo = (short) site.no();
        Set<Integer> found = new TreeSet<>();
        found.addAll(OneByOne.fetch(named.jobs(), job -> ofJob(sql, siteNo, job)));
        found.addAll(OneByOne.fetch(named.kits(), kit -> ofKit(sql, siteNo, kit)));
        found.addAll(OneByOne.fetch(named.cores(), core -> ofCore(sql, siteNo, core)));
        return found;
    }

    /** The tags that rows of cores bring together with a shipment. */
    private static List<String> onShipments(DSLContext sql, Site site, Named named) {
        return OneByOne.fetch(
                named.shipments(),
                shipment ->
                        sql.selectDistinct(CORES_FACT.CORE)
                                .from(CORES_FACT)
                                .where(
                                        CORES_FACT.SITE_NO.eq((short) site.no()),
                                        CORES_FACT.SHIPMENT.eq(shipment))
                                .fetch(CORES_FACT.CORE));
    }

    private static List<Integer> ofJob(DSLContext sql, short siteNo, String job) {
        return sql.select(JOB_NAME.JOB_NO)
                .from(JOB_NAME)
                .where(JOB_NAME.SITE_NO.eq(siteNo), JOB_NAME.JOB.eq(job))
                .fetch(JOB_NAME.JOB_NO);
    }

    private static List<Integer> ofKit(DSLContext sql, short siteNo, String kit) {
        return sql.select(KIT_LINK.JOB_NO)
                .from(KIT_LINK)
                .where(KIT_LINK.SITE_NO.eq(siteNo), KIT_LINK.KIT.eq(kit))
                .fetch(KIT_LINK.JOB_NO);
    }

    private static List<Integer> ofCore(DSLContext sql, short siteNo, String core) {
        return sql.select(CORE_TAG.JOB_NO)
                .from(CORE_TAG)
                .where(CORE_TAG.SITE_NO.eq(siteNo), CORE_TAG.CORE.eq(core))
                .fetch(CORE_TAG.JOB_NO);
    }
}
