package counterbench.review.store;

import counterbench.claims.CreditFacts;
import counterbench.cores.Acknowledgement;
import counterbench.cores.ShipmentFacts;
import counterbench.db.Store;
import counterbench.journal.store.AllPosted;
import counterbench.review.Component;
import counterbench.review.Horizon;
import counterbench.review.Terms;
import counterbench.shared.Site;
import counterbench.stock.Count;
import counterbench.stock.Issue;
import counterbench.stock.LedgerFacts;
import java.sql.Connection;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;

/**
 * One reading of a site, as of a moment and as known at an entry: its components one after the
 * other, and what belongs to no job. Memory holds a component at a time; jobs that share kits wait
 * for each other.
 */
public final class SiteScan implements AutoCloseable {
    private static final int LAST_JOB = (1 << 29) - 1;

    /** Of more jobs than these, what matters is found sooner by reading what there is of all. */
    private static final int FEW_JOBS = 1_000;

    private final Store store;
    private final Site site;
    private final Horizon horizon;
    private final Connection connection;
    private final DSLContext sql;
    private final SiteFacts siteFacts;
    private final Terms terms;
    private final JobFiles files;
    private final LooseKits looseKits;
    private final ShipmentReader shipmentReader;
    private final SharedKits shared;
    private final Optional<Instant> nextSiteFact;

    /**
     * @param known the entry that was the newest; facts of later ones are not read
     */
    public SiteScan(Store store, Site site, Instant asOf, long known) {
        this(store, site, asOf, known, null);
    }

    /** A reading that will ask for some jobs only, so that nothing is read for the others. */
    public static SiteScan ofJobs(Store store, Site site, Instant asOf, Set<Integer> jobNos) {
        return ofJobs(store, site, asOf, ReviewSite.NEWEST, jobNos);
    }

    /**
     * The same as it was known.
     *
     * @param known the entry that was the newest; facts of later ones are not read
     */
    public static SiteScan ofJobs(
            Store store, Site site, Instant asOf, long known, Set<Integer> jobNos) {
        return new SiteScan(store, site, asOf, known, jobNos);
    }

    private SiteScan(
            Store store, Site site, Instant asOf, long known, @Nullable Set<Integer> some) {
        @Nullable Set<Integer> jobNos = some == null || some.size() > FEW_JOBS ? null : some;
        this.store = store;
        this.site = site;
        this.horizon = new Horizon(site, asOf);
        this.connection = store.connectToRead();
        this.sql = store.on(connection);
        AllPosted posted = new AllPosted(sql, site.no(), known);
        Visible visible = new Visible(posted);
        FactReader reader = new FactReader(horizon);
        TermsReader termsReader = new TermsReader(sql, site, visible, horizon, jobNos);
        CreditMatches matches = CreditMatches.read(sql, site, visible, horizon);
        this.siteFacts = new SiteFacts(sql, site, visible, reader, termsReader.packs(), matches);
        this.terms = termsReader.terms(siteFacts.receipts());
        this.shared =
                jobNos == null
                        ? SharedKits.of(sql, site.no())
                        : SharedKits.of(sql, site.no(), jobNos);
        this.files =
                new JobFiles(
                        visible,
                        reader,
                        horizon,
                        siteFacts,
                        terms,
                        termsReader.sameVehicles(),
                        matches);
        this.shipmentReader = new ShipmentReader(sql, site, visible, reader);
        this.looseKits = new LooseKits(siteFacts, files, visible, reader);
        this.nextSiteFact = horizon.takeNext();
    }

    /** What holds for all jobs. */
    public Terms terms() {
        return terms;
    }

    /** The site that is read. */
    public Site site() {
        return site;
    }

    /** The moment as of which it is read. */
    public Instant asOf() {
        return horizon.asOf();
    }

    /** Gives each credit that belongs to no claim. */
    public void eachCreditOfNoClaim(Consumer<CreditFacts> credits) {
        siteFacts.eachCreditOfNoClaim(credits);
    }

    /** Shipments of which the return centre names cores or serials that were never removed here. */
    Set<String> shipmentsWithUnknownCores() {
        return siteFacts.acknowledgementsOfNoCore().stream()
                .map(Acknowledgement::shipment)
                .collect(Collectors.toSet());
    }

    /** Some shipments, whole. */
    public List<ShipmentFacts> shipments(Collection<String> shipments) {
        return shipmentReader.read(shipments);
    }

    /** The facts of the loose store alone. */
    public LedgerFacts storeOnly() {
        return siteFacts.storeOnly();
    }

    /** Counts of loose parts. */
    public List<Count> looseCounts() {
        return siteFacts.looseCounts();
    }

    /** What jobs took loose of some parts out of the store. */
    public List<Issue> looseIssues(Collection<String> parts) {
        return siteFacts.looseIssues(parts);
    }

    /** Gives every component: jobs in the order of their numbers, then kits that no job names. */
    public void all(Consumer<Component> components) {
        scan(1, LAST_JOB, components);
        giveRest(components);
        looseKits.each(sql, site.no(), components);
    }

    /**
     * Makes something of every component, ahead and on several threads, and gives it in the order
     * of {@link #all(Consumer)}. Not for an act that holds a lock: the threads read by connections
     * of their own.
     *
     * @param work pure
     */
    public <R> void all(Function<Component, R> work, Consumer<R> taker) {
        ReadAhead.<Component, R>each(this::all, work, taker);
    }

    /** Gives the components of some jobs. */
    public void of(Collection<Integer> jobNos, Consumer<Component> components) {
        SortedSet<Integer> wanted = new TreeSet<>();
        jobNos.forEach(no -> wanted.addAll(shared.groupOf(no)));
        Ranges.of(wanted).forEach(run -> scan(run.from(), run.to(), components));
        giveRest(components);
    }

    /** The numbers of the jobs in a job's component. */
    SortedSet<Integer> togetherWith(int jobNo) {
        return shared.groupOf(jobNo);
    }

    /**
     * When the first fact happens that belongs to no job and was left out because it lies ahead.
     */
    Optional<Instant> nextSiteFact() {
        return nextSiteFact;
    }

    /** Gives kits that no job names, of those serials. */
    public void looseKits(Collection<String> serials, Consumer<Component> components) {
        looseKits.of(sql, site.no(), serials, components);
    }

    /** jOOQ on the connection that it reads by. */
    DSLContext sql() {
        return sql;
    }

    /** Components whose last job turned out to have no rows. */
    private void giveRest(Consumer<Component> components) {
        shared.takeRest().forEach(parts -> components.accept(files.join(parts)));
    }

    private void scan(int from, int to, Consumer<Component> components) {
        try (JobRows rows = new JobRows(store, site.no(), from, to)) {
            for (int no = rows.nextJobNo(); no <= to; no = rows.nextJobNo()) {
                JobFiles.Part part = files.read(rows.take(no));
                shared.complete(no, part).ifPresent(parts -> components.accept(files.join(parts)));
            }
        }
    }

    @Override
    public void close() {
        store.closeReader(connection);
    }
}
