package counterbench.acts.store;

import static counterbench.db.generated.Tables.COUNTS_FACT;
import static counterbench.db.generated.Tables.ISSUES_FACT;
import static counterbench.db.generated.Tables.KITS_FACT;
import static counterbench.db.generated.Tables.KIT_LINK;
import static counterbench.db.generated.Tables.MOVES_FACT;
import static counterbench.db.generated.Tables.USES_FACT;

import counterbench.acts.KitListing;
import counterbench.acts.KitPlace;
import counterbench.acts.KitState;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.campaign.Packs;
import counterbench.campaign.store.JooqPacks;
import counterbench.db.JobKey;
import counterbench.db.Store;
import counterbench.journal.store.AllPosted;
import counterbench.review.store.KitReceipts;
import counterbench.shared.Site;
import counterbench.stock.Kit;
import counterbench.stock.ReceivedKit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/**
 * The kits on the shelf, without going through the whole site. A kit that nothing but its receipt
 * names is there; one that was issued and never put back is not; of the few others the ledger is
 * asked.
 */
public final class ShelfKits {
    private final Store store;
    private final Site site;
    private final Instant now;

    public ShelfKits(Store store, Site site, Instant now) {
        this.store = store;
        this.site = site;
        this.now = now;
    }

    private record Sorted(List<KitListing> sure, Set<String> doubtful) {}

    /**
     * Those on the shelf now, first to expire first.
     *
     * @param kitPart only those of that part
     */
    public List<KitListing> list(Optional<String> kitPart) {
        Sorted sorted = store.read(sql -> sort(sql, kitPart));
        List<KitListing> all = new ArrayList<>(sorted.sure());
        if (!sorted.doubtful().isEmpty()) {
            Named named = Named.NOTHING.withKits(sorted.doubtful());
            Situation situation = new ReadSituation(store).run(site, now, named);
            sorted.doubtful().stream()
                    .flatMap(kit -> situation.findKit(kit).stream())
                    .filter(KitState::isOnShelf)
                    .map(KitState::listing)
                    .filter(kit -> kitPart.isEmpty() || kitPart.get().equals(kit.kit().kitPart()))
                    .forEach(all::add);
        }
        all.sort(KitListing.FIRST_EXPIRED_FIRST);
        return all;
    }

    private Sorted sort(DSLContext sql, Optional<String> kitPart) {
        AllPosted posted = new AllPosted(sql);
        Packs packs = JooqPacks.all(sql, posted);
        Set<String> moved = moved(sql);
        Set<String> doubtful = new TreeSet<>(moved);
        doubtful.addAll(namedByJobs(sql, posted, kitPart));
        Condition ofPart = kitPart.map(KITS_FACT.KIT_PART::eq).orElse(DSL.noCondition());
        List<KitListing> sure = new ArrayList<>();
        for (Kit kit : KitReceipts.at(sql, site, now, posted, ofPart.and(DSL.not(isLinked())))) {
            if (!moved.contains(kit.kit()) && holdsSomething(kit, packs)) {
                sure.add(new KitListing(kit, KitPlace.ON_SHELF, null));
            }
        }
        return new Sorted(sure, doubtful);
    }

    private boolean holdsSomething(Kit kit, Packs packs) {
        return packs.kit(kit.kitPart(), kit.revision(), site.dayOf(kit.receivedAt()))
                .filter(terms -> !new ReceivedKit(kit, terms).contents().isEmpty())
                .isPresent();
    }

    private static Condition isLinked() {
        return DSL.exists(
                DSL.selectOne()
                        .from(KIT_LINK)
                        .where(
                                KIT_LINK.SITE_NO.eq(KITS_FACT.SITE_NO),
                                KIT_LINK.KIT.eq(KITS_FACT.KIT)));
    }

    /** Kits that rows of moves or counts name, those that arrived among them. */
    private Set<String> moved(DSLContext sql) {
        Set<String> kits = new HashSet<>();
        sql.selectDistinct(MOVES_FACT.KIT)
                .from(MOVES_FACT)
                .where(MOVES_FACT.SITE_NO.eq((short) site.no()), MOVES_FACT.KIT.isNotNull())
                .forEach(r -> kits.add(r.value1()));
        sql.selectDistinct(COUNTS_FACT.KIT)
                .from(COUNTS_FACT)
                .where(COUNTS_FACT.SITE_NO.eq((short) site.no()), COUNTS_FACT.KIT.isNotNull())
                .forEach(r -> kits.add(r.value1()));
        return kits;
    }

    /** Kits that jobs name and that were not simply issued. */
    private Set<String> namedByJobs(DSLContext sql, AllPosted posted, Optional<String> kitPart) {
        Set<String> kits = new HashSet<>();
        int first = Integer.MAX_VALUE;
        int last = 0;
        var links =
                sql.select(KIT_LINK.KIT, KIT_LINK.JOB_NO)
                        .from(KIT_LINK)
                        .where(KIT_LINK.SITE_NO.eq((short) site.no()).and(isOfPart(kitPart)))
                        .fetch();
        for (var link : links) {
            kits.add(link.value1());
            first = Math.min(first, link.value2());
            last = Math.max(last, link.value2());
        }
        if (!kits.isEmpty()) {
            kits.removeAll(simplyIssued(sql, posted, first, last));
        }
        return kits;
    }

    private static Condition isOfPart(Optional<String> kitPart) {
        return kitPart.map(
                        part ->
                                DSL.exists(
                                        DSL.selectOne()
                                                .from(KITS_FACT)
                                                .where(
                                                        KITS_FACT.SITE_NO.eq(KIT_LINK.SITE_NO),
                                                        KITS_FACT.KIT.eq(KIT_LINK.KIT),
                                                        KITS_FACT.KIT_PART.eq(part))))
                .orElse(DSL.noCondition());
    }

    private Set<String> simplyIssued(DSLContext sql, AllPosted posted, int first, int last) {
        long from = JobKey.first(site.no(), first);
        long to = JobKey.last(site.no(), last);
        Set<String> issued = new HashSet<>();
        sql.select(ISSUES_FACT.KIT, ISSUES_FACT.BATCH, ISSUES_FACT.LINE)
                .from(ISSUES_FACT)
                .where(ISSUES_FACT.K.between(from, to), ISSUES_FACT.KIT.isNotNull())
                .forEach(
                        r -> {
                            if (posted.counts(site.no(), r.value2(), r.value3())) {
                                issued.add(r.value1());
                            }
                        });
        sql.selectDistinct(USES_FACT.KIT)
                .from(USES_FACT)
                .where(
                        USES_FACT.K.between(from, to),
                        USES_FACT.CONDITION_WORD.eq("put-back"),
                        USES_FACT.KIT.isNotNull())
                .forEach(r -> issued.remove(r.value1()));
        return issued;
    }
}
