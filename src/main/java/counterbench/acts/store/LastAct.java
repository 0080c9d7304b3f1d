package counterbench.acts.store;

import static counterbench.db.generated.Tables.ENTRY;
import static counterbench.db.generated.Tables.JOBS_FACT;

import counterbench.acts.JobState;
import counterbench.cores.CoreEvent;
import counterbench.db.Store;
import counterbench.intake.store.ImportPaper;
import counterbench.journal.Entry;
import counterbench.journal.store.AllPosted;
import counterbench.journal.store.EntryReader;
import counterbench.people.Person;
import counterbench.procedure.Mark;
import counterbench.shared.Address;
import counterbench.shared.Site;
import counterbench.stock.Issue;
import counterbench.stock.Use;
import java.util.Collections;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jooq.DSLContext;

/** Finds what a person did last on a job and has not taken back. Its opening is not among it. */
public final class LastAct {
    private final Store store;
    private final Site site;

    public LastAct(Store store, Site site) {
        this.store = store;
        this.site = site;
    }

    /** The newest entry of the person that a fact of the job is in; none of an import. */
    public Optional<Entry> of(JobState job, Person person) {
        return store.read(
                sql ->
                        entries(sql, job).stream()
                                .flatMap(no -> EntryReader.byNumber(sql, site.no(), no).stream())
                                .filter(entry -> entry.person().equals(person.name()))
                                .filter(entry -> !entry.kind().equals(ImportPaper.ENTRY_KIND))
                                .findFirst());
    }

    private NavigableSet<Long> entries(DSLContext sql, JobState job) {
        NavigableSet<Long> numbers = new TreeSet<>(Collections.reverseOrder());
        Stream.of(
                        job.file().issues().stream().map(Issue::address),
                        job.file().uses().stream().map(Use::address),
                        job.file().marks().stream().map(Mark::address),
                        job.file().cores().stream().map(CoreEvent::address))
                .flatMap(addresses -> addresses)
                .map(Address::entry)
                .forEach(numbers::add);
        numbers.addAll(ends(sql, job.name()));
        return numbers;
    }

    /** The entries that ended the job. */
    private NavigableSet<Long> ends(DSLContext sql, String job) {
        AllPosted posted = new AllPosted(sql);
        short siteNo = (short) site.no();
        NavigableSet<Long> numbers = new TreeSet<>();
        sql.select(JOBS_FACT.BATCH, JOBS_FACT.LINE, ENTRY.NUMBER)
                .from(JOBS_FACT)
                .join(ENTRY)
                .on(ENTRY.SITE_NO.eq(JOBS_FACT.SITE_NO), ENTRY.BATCH.eq(JOBS_FACT.BATCH))
                .where(
                        JOBS_FACT.SITE_NO.eq(siteNo),
                        JOBS_FACT.JOB.eq(job),
                        JOBS_FACT.OUTCOME.isNotNull())
                .forEach(
                        row -> {
                            if (posted.counts(siteNo, row.value1(), row.value2())) {
                                numbers.add(row.value3());
                            }
                        });
        return numbers;
    }
}
