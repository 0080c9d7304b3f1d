package counterbench.acts.store;

import static counterbench.db.generated.Tables.ACKNOWLEDGEMENTS_FACT;
import static counterbench.db.generated.Tables.CORE_TAG;
import static counterbench.db.generated.Tables.JOB_NAME;

import counterbench.acts.CoreCase;
import counterbench.acts.rack.BoardLine;
import counterbench.acts.rack.CoreCredits;
import counterbench.acts.rack.Owed;
import counterbench.db.OneByOne;
import counterbench.db.Store;
import counterbench.journal.store.AllPosted;
import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.SubjectKind;
import counterbench.review.Component;
import counterbench.review.FindingState;
import counterbench.review.StatedFinding;
import counterbench.review.store.ReviewSite;
import counterbench.review.store.SiteScan;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.LongConsumer;
import org.jooq.DSLContext;

/**
 * Reads the cores of a site for its living board. Cores that the return centre's rows plainly
 * accepted are done with, and their jobs are not read for it.
 */
public final class ReadRack {
    private final Store store;
    private final Site site;
    private final Instant now;

    public ReadRack(Store store, Site site, Instant now) {
        this.store = store;
        this.site = site;
        this.now = now;
    }

    /** Which findings of the site the board has to know. */
    public static boolean isOfCores(Finding finding) {
        return finding.subject().kind() == SubjectKind.CORE || finding.rule() == Rule.CORE_MISSING;
    }

    /**
     * Cores that are not plainly accepted.
     *
     * @param findings what is found at the site, at least {@link #isOfCores of cores}
     * @param progress is told how many jobs have been gone through
     */
    public List<BoardLine> undecided(Collection<StatedFinding> findings, LongConsumer progress) {
        Set<Integer> jobs = store.read(this::undecidedJobs);
        try (SiteScan scan = SiteScan.ofJobs(store, site, now, jobs)) {
            Reading reading = new Reading(scan, findings, progress);
            scan.of(jobs, reading::add);
            return reading.lines;
        }
    }

    /** Every core that the site ever had; goes through the whole site. */
    public List<BoardLine> all(Collection<StatedFinding> findings, LongConsumer progress) {
        try (SiteScan scan = new SiteScan(store, site, now, ReviewSite.NEWEST)) {
            Reading reading = new Reading(scan, findings, progress);
            scan.all(reading::add);
            return reading.lines;
        }
    }

    /** What is owed for cores: for those that are not accepted, and for those never removed. */
    public List<Owed> owed(Collection<StatedFinding> findings, LongConsumer progress) {
        Set<Integer> jobs = store.read(this::undecidedJobs);
        jobs.addAll(store.read(sql -> jobsThatLackCores(sql, findings)));
        try (SiteScan scan = SiteScan.ofJobs(store, site, now, jobs)) {
            Reading reading = new Reading(scan, List.of(), progress);
            List<Owed> owed = new ArrayList<>();
            scan.of(
                    jobs,
                    component -> {
                        reading.add(component);
                        owed.addAll(Owed.ofMissing(site, now, scan.terms(), component));
                    });
            reading.lines.stream().flatMap(line -> Owed.of(line).stream()).forEach(owed::add);
            return owed;
        }
    }

    private Set<Integer> jobsThatLackCores(DSLContext sql, Collection<StatedFinding> findings) {
        List<String> names =
                findings.stream()
                        .map(StatedFinding::finding)
                        .filter(f -> f.rule() == Rule.CORE_MISSING)
                        .map(f -> f.subject().name())
                        .toList();
        return new TreeSet<>(
                OneByOne.fetch(
                        names,
                        job ->
                                sql.select(JOB_NAME.JOB_NO)
                                        .from(JOB_NAME)
                                        .where(
                                                JOB_NAME.SITE_NO.eq((short) site.no()),
                                                JOB_NAME.JOB.eq(job))
                                        .fetch(JOB_NAME.JOB_NO)));
    }

    private Set<Integer> undecidedJobs(DSLContext sql) {
        Set<String> accepted = plainlyAccepted(sql);
        Set<Integer> jobs = new TreeSet<>();
        sql.select(CORE_TAG.CORE, CORE_TAG.JOB_NO)
                .from(CORE_TAG)
                .where(CORE_TAG.SITE_NO.eq((short) site.no()))
                .forEach(
                        r -> {
                            if (!accepted.contains(r.value1())) {
                                jobs.add(r.value2());
                            }
                        });
        return jobs;
    }

    /** Accepted by a row that names the tag, and rejected by none. */
    private Set<String> plainlyAccepted(DSLContext sql) {
        AllPosted posted = new AllPosted(sql);
        Set<String> accepted = new HashSet<>();
        Set<String> rejected = new HashSet<>();
        sql.select(
                        ACKNOWLEDGEMENTS_FACT.CORE,
                        ACKNOWLEDGEMENTS_FACT.EVENT,
                        ACKNOWLEDGEMENTS_FACT.AT,
                        ACKNOWLEDGEMENTS_FACT.BATCH,
                        ACKNOWLEDGEMENTS_FACT.LINE)
                .from(ACKNOWLEDGEMENTS_FACT)
                .where(
                        ACKNOWLEDGEMENTS_FACT.SITE_NO.eq((short) site.no()),
                        ACKNOWLEDGEMENTS_FACT.CORE.isNotNull(),
                        ACKNOWLEDGEMENTS_FACT.EVENT.in("accepted", "rejected"))
                .forEach(
                        r -> {
                            boolean counts =
                                    posted.counts(site.no(), r.value4(), r.value5())
                                            && !r.value3().isAfter(now);
                            if (counts) {
                                (r.value2().equals("accepted") ? accepted : rejected)
                                        .add(r.value1());
                            }
                        });
        accepted.removeAll(rejected);
        return accepted;
    }

    private static final class Reading {
        private final SiteScan scan;
        private final Map<String, List<Finding>> open = new HashMap<>();
        private final CoreCredits credits;
        private final LongConsumer progress;
        private final List<BoardLine> lines = new ArrayList<>();
        private long jobs;

        Reading(SiteScan scan, Collection<StatedFinding> findings, LongConsumer progress) {
            this.scan = scan;
            this.progress = progress;
            this.credits = new CoreCredits(scan.site());
            scan.eachCreditOfNoClaim(credits::add);
            findings.stream()
                    .filter(stated -> stated.state() == FindingState.OPEN)
                    .map(StatedFinding::finding)
                    .filter(f -> f.subject().kind() == SubjectKind.CORE)
                    .forEach(
                            f ->
                                    open.computeIfAbsent(
                                                    f.subject().name(), core -> new ArrayList<>())
                                            .add(f));
        }

        void add(Component component) {
            CoreCase.allOf(scan.site(), scan.asOf(), scan.terms(), component).forEach(this::add);
            jobs += component.jobs().size();
            progress.accept(jobs);
        }

        private void add(CoreCase core) {
            lines.add(
                    BoardLine.of(
                            core,
                            scan.site(),
                            scan.asOf(),
                            credits.creditedAt(core).orElse(null),
                            open.getOrDefault(core.core().core(), List.of())));
        }
    }
}
