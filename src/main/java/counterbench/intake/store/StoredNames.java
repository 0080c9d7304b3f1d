package counterbench.intake.store;

import static counterbench.db.generated.Tables.CORES_FACT;
import static counterbench.db.generated.Tables.CORE_TAG;
import static counterbench.db.generated.Tables.JOBS_FACT;
import static counterbench.db.generated.Tables.JOB_NAME;
import static counterbench.db.generated.Tables.PEOPLE_FACT;

import counterbench.campaign.Pack;
import counterbench.campaign.Packs;
import counterbench.campaign.PartUnit;
import counterbench.db.Scratch;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.intake.Names;
import counterbench.journal.store.AllPosted;
import counterbench.journal.store.FactTable;
import counterbench.journal.store.JobRange;
import counterbench.people.store.JooqSites;
import counterbench.shared.Site;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.Record2;
import org.jooq.Record3;

/** Names that the store holds, and those that the import has brought so far. */
final class StoredNames implements Names {
    private static final String REMOVED = "removed";
    private static final String NONE = "";

    private final DSLContext sql;
    private final Site site;
    private final AllPosted posted;
    private final Packs packs;
    private final Map<String, Boolean> jobsOfImport;
    private final boolean isNewSite;
    private final StoredParts parts;
    private final Set<String> people = new HashSet<>();

    /** By job; {@link #NONE} where there is no such job. */
    private final Map<String, String> campaignOfJob;

    /** By tag; {@link #NONE} where no such core was removed. */
    private final Map<String, String> jobOfCore;

    private final Map<String, Integer> coresOfJob;

    /**
     * @param jobsOfImport the jobs that the import has brought so far, of whatever site; added to
     * @param scratch where it remembers what it has looked up and what the import has brought
     */
    StoredNames(
            DSLContext sql,
            Site site,
            AllPosted posted,
            Packs packs,
            Map<String, Boolean> jobsOfImport,
            Scratch scratch) {
        this.campaignOfJob = scratch.map();
        this.jobOfCore = scratch.map();
        this.coresOfJob = scratch.map();
        this.sql = sql;
        this.site = site;
        this.posted = posted;
        this.packs = packs;
        this.jobsOfImport = jobsOfImport;
        // A site without jobs has no names to look up; its first import brings all of them.
        this.isNewSite = !sql.fetchExists(JOB_NAME, JOB_NAME.SITE_NO.eq((short) site.no()));
        this.parts = new StoredParts(sql, site, posted, packs);
        sql.select(PEOPLE_FACT.SITE_NO, PEOPLE_FACT.BATCH, PEOPLE_FACT.LINE, PEOPLE_FACT.NAME)
                .from(PEOPLE_FACT)
                .forEach(r -> addIf(people, r.value1(), r.value2(), r.value3(), r.value4()));
    }

    private void addIf(Set<String> names, short siteNo, long batch, int line, String name) {
        if (posted.counts(siteNo, batch, line)) {
            names.add(name);
        }
    }

    /**
     * Takes the names that a row of the import brings. Of jobs and cores, some cells may not have
     * been read; the rows that name them are not to blame for that.
     */
    void bring(FactRow row) {
        switch (row.kind()) {
            case PEOPLE -> people.add(Objects.requireNonNull(row.text("name")));
            case PARTS_LIST -> bringPart(row);
            case JOBS -> bringJob(row);
            case CORES -> bringCore(row);
            default -> {
                // No other kind brings names that rows are held to.
            }
        }
    }

    private void bringPart(FactRow row) {
        parts.bring(
                Objects.requireNonNull(row.text("part")), Objects.requireNonNull(row.text("unit")));
    }

    private void bringJob(FactRow row) {
        String job = row.text("job");
        String campaign = row.text("campaign");
        if (job != null && campaign != null) {
            campaignOfJob.put(job, campaign);
            jobsOfImport.put(job, true);
        }
    }

    private void bringCore(FactRow row) {
        String job = row.text("job");
        String core = row.text("core");
        if (core != null
                && REMOVED.equals(row.text("event"))
                && job != null
                && jobOfCore(core).isEmpty()) {
            jobOfCore.put(core, job);
            coresOfJob.put(job, coresOf(job) + 1);
        }
    }

    @Override
    public List<Pack> revisions(String campaign) {
        return packs.revisions(campaign);
    }

    @Override
    public SortedSet<String> revisionsOfKit(String kitPart) {
        return packs.all().stream()
                .filter(pack -> pack.kit(kitPart).isPresent())
                .map(Pack::revision)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Override
    public boolean isPart(String part) {
        return parts.isPart(part);
    }

    @Override
    public boolean isCounted(String part) {
        return parts.isCounted(part);
    }

    @Override
    public Optional<PartUnit> packedUnit(String part) {
        return parts.packedUnit(part);
    }

    @Override
    public boolean isPerson(String name) {
        return people.contains(name);
    }

    @Override
    public Optional<String> campaignOf(String job) {
        return some(campaignOfJob.computeIfAbsent(job, j -> storedCampaign(j).orElse(NONE)));
    }

    private Optional<String> storedCampaign(String job) {
        if (isNewSite) {
            return Optional.empty();
        }
        return sql
                .select(JOBS_FACT.BATCH, JOBS_FACT.LINE, JOBS_FACT.CAMPAIGN)
                .from(JOBS_FACT)
                .where(JOBS_FACT.SITE_NO.eq((short) site.no()), JOBS_FACT.JOB.eq(job))
                .fetch()
                .stream()
                .filter(r -> posted.counts(site.no(), r.value1(), r.value2()))
                .map(Record3::value3)
                .findFirst();
    }

    @Override
    public Optional<String> jobOfCore(String core) {
        return some(jobOfCore.computeIfAbsent(core, c -> storedJobOfCore(c).orElse(NONE)));
    }

    private static Optional<String> some(String name) {
        return name.equals(NONE) ? Optional.empty() : Optional.of(name);
    }

    private Optional<String> storedJobOfCore(String core) {
        if (isNewSite) {
            return Optional.empty();
        }
        return sql.select(JOB_NAME.JOB, JOB_NAME.JOB_NO)
                .from(CORE_TAG)
                .join(JOB_NAME)
                .on(JOB_NAME.SITE_NO.eq(CORE_TAG.SITE_NO), JOB_NAME.JOB_NO.eq(CORE_TAG.JOB_NO))
                .where(CORE_TAG.SITE_NO.eq((short) site.no()), CORE_TAG.CORE.eq(core))
                .fetchOptional()
                .filter(r -> removedOn(r.value2()).contains(core))
                .map(Record2::value1)
                .filter(job -> campaignOf(job).isPresent());
    }

    /** The cores of a job whose removal was not taken back. */
    private Set<String> removedOn(int jobNo) {
        FactTable table = FactTable.of(FactKind.CORES);
        return sql
                .select(CORES_FACT.BATCH, CORES_FACT.LINE, CORES_FACT.CORE)
                .from(CORES_FACT)
                .where(new JobRange(site.no(), jobNo).contains(table), CORES_FACT.EVENT.eq(REMOVED))
                .fetch()
                .stream()
                .filter(r -> posted.counts(site.no(), r.value1(), r.value2()))
                .map(Record3::value3)
                .collect(Collectors.toSet());
    }

    @Override
    public int coresOf(String job) {
        return coresOfJob.computeIfAbsent(job, this::storedCores);
    }

    private int storedCores(String job) {
        if (isNewSite) {
            return 0;
        }
        return JobRange.find(sql, site.no(), job)
                .map(range -> removedOn(range.jobNo()).size())
                .orElse(0);
    }

    @Override
    public boolean isJobAnywhere(String job) {
        return campaignOf(job).isPresent()
                || jobsOfImport.containsKey(job)
                || sql
                        .select(JOBS_FACT.SITE_NO, JOBS_FACT.BATCH, JOBS_FACT.LINE)
                        .from(JOBS_FACT)
                        .where(JOBS_FACT.SITE_NO.in(siteNos()), JOBS_FACT.JOB.eq(job))
                        .fetch()
                        .stream()
                        .anyMatch(r -> posted.counts(r.value1(), r.value2(), r.value3()));
    }

    private List<Short> siteNos() {
        return JooqSites.all(sql).stream().map(s -> (short) s.no()).toList();
    }

    @Override
    public ZoneId zone() {
        return site.zone();
    }

    @Override
    public String currency() {
        return site.currency().getCurrencyCode();
    }
}
