package counterbench.acts.store;

import static counterbench.db.generated.Tables.CORES_FACT;
import static counterbench.db.generated.Tables.CORE_TAG;

import counterbench.acts.CoreAway;
import counterbench.acts.Named;
import counterbench.cores.CoreEvent.Kind;
import counterbench.db.Store;
import counterbench.db.Together;
import counterbench.facts.FactKind;
import counterbench.journal.store.AllPosted;
import counterbench.journal.store.FactTable;
import counterbench.journal.store.JobRange;
import counterbench.people.store.StaffBook;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jooq.DSLContext;
import org.jooq.Record2;
import org.jooq.Record4;
import org.jooq.Select;
import org.jooq.impl.DSL;

/**
 * Looks up the cores that are not in the yard of their own site and have not left for the return
 * centre. Cores that never travelled are not read, nor those that were shipped after they did.
 */
public final class ReadCoresAway {
    private final Store store;

    public ReadCoresAway(Store store) {
        this.store = store;
    }

    /** A fact that moved a core, as far as it matters here. */
    private record Moved(Instant at, boolean toItsOwn) {
        /** Of two at one instant, the one that leads away counts; the history tells exactly. */
        private Moved then(Moved other) {
            return at.equals(other.at) ? new Moved(at, toItsOwn && other.toItsOwn) : other;
        }
    }

    /** That a core was shipped, and where it is written. */
    private record Shipped(String core, Instant at, long batch, int line) {}

    /** Those of all sites as they stood at a time, by tag. */
    public List<CoreAway> at(Instant time) {
        List<CoreAway> found = new ArrayList<>();
        for (Site owner : new StaffBook(store).sites()) {
            Set<String> tags = store.read(sql -> travelling(sql, owner, time));
            if (!tags.isEmpty()) {
                of(owner, tags, time).stream().filter(CoreAway::isAway).forEach(found::add);
            }
        }
        found.sort(CoreAway.BY_TAG);
        return found;
    }

    /** Cores of these tags of all sites, wherever they were at a time. */
    List<CoreAway> wherever(Collection<String> tags, Instant time) {
        return new StaffBook(store)
                .sites().stream()
                        .flatMap(owner -> of(owner, new TreeSet<>(tags), time).stream())
                        .toList();
    }

    private List<CoreAway> of(Site owner, Set<String> tags, Instant time) {
        Named named = Named.NOTHING.withCores(tags);
        return new ReadSituation(store)
                .run(owner, time, named).cores().stream()
                        .filter(core -> tags.contains(core.core().core()))
                        .map(core -> CoreAway.of(owner, core))
                        .toList();
    }

    /** Tags of cores that were moved last to somewhere else, and not shipped since. */
    private static Set<String> travelling(DSLContext sql, Site owner, Instant time) {
        AllPosted posted = new AllPosted(sql);
        Map<String, Moved> last = lastMoved(sql, posted, owner, time);
        last.values().removeIf(Moved::toItsOwn);
        for (Shipped shipped : shipped(sql, owner, last.keySet())) {
            last.computeIfPresent(
                    shipped.core(),
                    (tag, moved) ->
                            posted.counts(owner.no(), shipped.batch(), shipped.line())
                                            && !shipped.at().isAfter(time)
                                            && moved.at().isBefore(shipped.at())
                                    ? null
                                    : moved);
        }
        return new TreeSet<>(last.keySet());
    }

    private static Map<String, Moved> lastMoved(
            DSLContext sql, AllPosted posted, Site owner, Instant time) {
        Map<String, Moved> last = new HashMap<>();
        sql.selectFrom(CORES_FACT)
                .where(CORES_FACT.OTHER_SITE.isNotNull(), CORES_FACT.SITE_NO.eq((short) owner.no()))
                .orderBy(CORES_FACT.AT, CORES_FACT.BATCH, CORES_FACT.LINE)
                .forEach(
                        r -> {
                            boolean counts = posted.counts(owner.no(), r.getBatch(), r.getLine());
                            if (counts && !r.getAt().isAfter(time)) {
                                boolean home =
                                        r.getEvent().equals(Kind.ARRIVED.word())
                                                && r.getOtherSite().equals(owner.site());
                                last.merge(r.getCore(), new Moved(r.getAt(), home), Moved::then);
                            }
                        });
        return last;
    }

    /** The shippings of cores, whether they count or not. */
    private static List<Shipped> shipped(DSLContext sql, Site owner, Set<String> tags) {
        List<Record2<String, Integer>> jobs =
                Together.fetch(
                        sql,
                        List.copyOf(tags),
                        tag ->
                                DSL.select(CORE_TAG.CORE, CORE_TAG.JOB_NO)
                                        .from(CORE_TAG)
                                        .where(
                                                CORE_TAG.SITE_NO.eq((short) owner.no()),
                                                CORE_TAG.CORE.eq(tag)));
        return Together.fetch(sql, jobs, job -> shipped(owner, job.value1(), job.value2())).stream()
                .map(r -> new Shipped(r.value1(), r.value2(), r.value3(), r.value4()))
                .toList();
    }

    private static Select<Record4<String, Instant, Long, Integer>> shipped(
            Site owner, String tag, int jobNo) {
        return DSL.select(CORES_FACT.CORE, CORES_FACT.AT, CORES_FACT.BATCH, CORES_FACT.LINE)
                .from(CORES_FACT)
                .where(
                        new JobRange(owner.no(), jobNo).contains(FactTable.of(FactKind.CORES)),
                        CORES_FACT.CORE.eq(tag),
                        CORES_FACT.EVENT.eq(Kind.SHIPPED.word()));
    }
}
