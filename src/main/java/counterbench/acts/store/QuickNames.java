package counterbench.acts.store;

import static counterbench.db.generated.Tables.CORES_FACT;
import static counterbench.db.generated.Tables.CORE_TAG;
import static counterbench.db.generated.Tables.INSTRUMENTS_FACT;
import static counterbench.db.generated.Tables.JOBS_FACT;
import static counterbench.db.generated.Tables.JOB_NAME;
import static counterbench.db.generated.Tables.KITS_FACT;
import static counterbench.db.generated.Tables.KIT_LINK;
import static counterbench.db.generated.Tables.MOVES_FACT;
import static counterbench.db.generated.Tables.PARTS_FACT;
import static counterbench.db.generated.Tables.SHIPMENTS_FACT;
import static counterbench.db.generated.Tables.SITE;

import counterbench.campaign.KitLine;
import counterbench.campaign.KitTerms;
import counterbench.campaign.Packs;
import counterbench.campaign.store.PackBook;
import counterbench.cores.CoreEvent;
import counterbench.db.Store;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.impl.DSL;

/**
 * Names to propose while somebody types: quickly looked up, a few only, and no promise. What was
 * taken back may be among them, and a kit that was put back may not; the act itself looks exactly.
 */
public final class QuickNames {
    private static final int MOST = 200;

    /** So many rows are looked through for what happened last. */
    private static final int NEWEST = 4_000;

    private final Store store;
    private final Optional<String> site;
    private final String begun;

    /**
     * @param site the site whose names are meant; empty for all sites
     * @param begun what the names begin with
     */
    public QuickNames(Store store, Optional<String> site, String begun) {
        this.store = store;
        this.site = site;
        this.begun = begun;
    }

    /** Jobs, the newest first. */
    public List<String> jobs() {
        return store.read(
                sql ->
                        sql.select(JOB_NAME.JOB)
                                .from(JOB_NAME)
                                .where(begins(JOB_NAME.JOB).and(atSite(JOB_NAME.SITE_NO)))
                                .orderBy(JOB_NAME.JOB_NO.desc(), JOB_NAME.SITE_NO)
                                .limit(MOST)
                                .fetch(JOB_NAME.JOB));
    }

    /** Jobs that have not ended, the newest first. */
    public List<String> openJobs() {
        var ended = JOBS_FACT.as("ended");
        Condition open =
                JOBS_FACT
                        .OUTCOME
                        .isNull()
                        .and(
                                DSL.notExists(
                                        DSL.selectOne()
                                                .from(ended)
                                                .where(
                                                        ended.SITE_NO.eq(JOBS_FACT.SITE_NO),
                                                        ended.JOB.eq(JOBS_FACT.JOB),
                                                        ended.OUTCOME.isNotNull())));
        return store.read(
                sql ->
                        sql
                                .select(JOBS_FACT.JOB)
                                .from(JOBS_FACT)
                                .where(
                                        begins(JOBS_FACT.JOB)
                                                .and(atSite(JOBS_FACT.SITE_NO))
                                                .and(open))
                                .orderBy(JOBS_FACT.K.desc())
                                .limit(MOST)
                                .fetch(JOBS_FACT.JOB)
                                .stream()
                                .distinct()
                                .toList());
    }

    /** Kits that were received and that nothing has taken off the shelf, first to expire first. */
    public List<String> kitsOnShelf() {
        Condition used =
                DSL.exists(
                        DSL.selectOne()
                                .from(KIT_LINK)
                                .where(
                                        KIT_LINK.SITE_NO.eq(KITS_FACT.SITE_NO),
                                        KIT_LINK.KIT.eq(KITS_FACT.KIT)));
        Condition left =
                KITS_FACT.KIT.in(
                        DSL.select(MOVES_FACT.KIT)
                                .from(MOVES_FACT)
                                .where(
                                        MOVES_FACT.SITE_NO.eq(KITS_FACT.SITE_NO),
                                        MOVES_FACT.KIT.isNotNull(),
                                        MOVES_FACT.PART.isNull()));
        return kits(DSL.not(used).andNot(left));
    }

    /** Kits, first to expire first. */
    public List<String> kits() {
        return kits(DSL.noCondition());
    }

    private List<String> kits(Condition which) {
        return store.read(
                sql ->
                        sql
                                .select(KITS_FACT.KIT)
                                .from(KITS_FACT)
                                .where(
                                        begins(KITS_FACT.KIT)
                                                .and(atSite(KITS_FACT.SITE_NO))
                                                .and(which))
                                .orderBy(KITS_FACT.EXPIRES_ON, KITS_FACT.KIT, KITS_FACT.BATCH)
                                .limit(MOST)
                                .fetch(KITS_FACT.KIT)
                                .stream()
                                .distinct()
                                .toList());
    }

    /** Kits that another site has sent to this one. */
    public List<String> kitsUnderWay() {
        Condition here = site.map(MOVES_FACT.OTHER_SITE::eq).orElse(DSL.noCondition());
        return names(
                MOVES_FACT,
                MOVES_FACT.KIT,
                MOVES_FACT.EVENT.eq("sent").and(MOVES_FACT.KIT.isNotNull()).and(here));
    }

    /** Core tags. */
    public List<String> cores() {
        return names(CORE_TAG, CORE_TAG.CORE, atSite(CORE_TAG.SITE_NO));
    }

    /** Tags of cores, of whatever site, that were sent to this one. */
    public List<String> coresUnderWay() {
        Condition here =
                site.map(CORES_FACT.OTHER_SITE::eq).orElse(CORES_FACT.OTHER_SITE.isNotNull());
        return names(
                CORES_FACT,
                CORES_FACT.CORE,
                CORES_FACT.EVENT.eq(CoreEvent.Kind.SENT.word()).and(here));
    }

    /** Tags of cores of the newest jobs whose drain has begun and not ended since. */
    public List<String> coresDraining() {
        String begin = CoreEvent.Kind.DRAIN_BEGUN.word();
        String end = CoreEvent.Kind.DRAIN_ENDED.word();
        Map<String, Instant> begun = new TreeMap<>();
        Map<String, Instant> ended = new HashMap<>();
        store.read(
                        sql ->
                                sql.select(CORES_FACT.CORE, CORES_FACT.EVENT, CORES_FACT.AT)
                                        .from(CORES_FACT)
                                        .where(
                                                begins(CORES_FACT.CORE),
                                                atSite(CORES_FACT.SITE_NO),
                                                CORES_FACT.EVENT.in(begin, end))
                                        .orderBy(CORES_FACT.K.desc())
                                        .limit(NEWEST)
                                        .fetch())
                .forEach(
                        row ->
                                (row.value2().equals(begin) ? begun : ended)
                                        .merge(row.value1(), row.value3(), QuickNames::later));
        begun.entrySet()
                .removeIf(
                        core ->
                                !core.getValue()
                                        .isAfter(ended.getOrDefault(core.getKey(), Instant.MIN)));
        return few(begun.keySet());
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    /** Instruments. */
    public List<String> instruments() {
        return names(
                INSTRUMENTS_FACT, INSTRUMENTS_FACT.INSTRUMENT, atSite(INSTRUMENTS_FACT.SITE_NO));
    }

    /** Shipments. */
    public List<String> shipments() {
        return names(SHIPMENTS_FACT, SHIPMENTS_FACT.SHIPMENT, atSite(SHIPMENTS_FACT.SITE_NO));
    }

    /** Sites. */
    public List<String> sites() {
        return names(SITE, SITE.SITE_, DSL.noCondition());
    }

    /** Campaigns of which a pack is loaded. */
    public List<String> campaigns() {
        return few(packs().campaigns());
    }

    /** Loose parts. */
    public List<String> parts() {
        Set<String> parts =
                new TreeSet<>(names(PARTS_FACT, PARTS_FACT.PART, atSite(PARTS_FACT.SITE_NO)));
        packs().all().stream()
                .flatMap(pack -> pack.kits().stream())
                .flatMap(kit -> kit.contents().stream())
                .flatMap(QuickNames::names)
                .forEach(parts::add);
        return few(parts);
    }

    private static Stream<String> names(KitLine line) {
        return Stream.concat(Stream.of(line.part()), line.replaces().stream());
    }

    /** Parts that are kits. */
    public List<String> kitParts() {
        Set<String> parts = new TreeSet<>();
        packs().all().stream()
                .flatMap(pack -> pack.kits().stream())
                .map(KitTerms::part)
                .forEach(parts::add);
        return few(parts);
    }

    private Packs packs() {
        return new PackBook(store).all();
    }

    private List<String> few(Set<String> names) {
        return names.stream().filter(name -> name.startsWith(begun)).limit(MOST).toList();
    }

    private List<String> names(Table<?> table, Field<String> name, Condition which) {
        return store.read(
                sql ->
                        sql.selectDistinct(name)
                                .from(table)
                                .where(begins(name).and(which))
                                .orderBy(name)
                                .limit(MOST)
                                .fetch(name));
    }

    private Condition begins(Field<String> name) {
        return begun.isEmpty() ? DSL.noCondition() : name.startsWith(begun);
    }

    private Condition atSite(Field<Short> siteNo) {
        return site.<Condition>map(
                        name ->
                                siteNo.in(
                                        DSL.select(SITE.SITE_NO)
                                                .from(SITE)
                                                .where(SITE.SITE_.eq(name))))
                .orElse(DSL.noCondition());
    }
}
