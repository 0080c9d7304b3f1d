package counterbench.review.store;

import static counterbench.db.generated.Tables.CLAIMS_FACT;
import static counterbench.db.generated.Tables.CORES_FACT;

import counterbench.db.Store;
import counterbench.facts.FactKind;
import counterbench.journal.store.FactTable;
import counterbench.journal.store.JobRange;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.shared.Site;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.jooq.DSLContext;

/** What belongs to a job, and so what findings about the job may be about. */
public final class JobSubjects {
    private final Set<Subject> subjects = new HashSet<>();

    private JobSubjects(String job) {
        subjects.add(Subject.of(SubjectKind.JOB, job));
    }

    /** The job, its removed cores and its claims; empty if the site knows no such job. */
    public static Optional<JobSubjects> of(Store store, Site site, String job) {
        return store.read(
                sql -> JobRange.find(sql, site.no(), job).map(range -> read(sql, job, range)));
    }

    private static JobSubjects read(DSLContext sql, String job, JobRange range) {
        JobSubjects found = new JobSubjects(job);
        sql.selectDistinct(CORES_FACT.CORE)
                .from(CORES_FACT)
                .where(range.contains(FactTable.of(FactKind.CORES)))
                .forEach(r -> found.add(SubjectKind.CORE, r.value1()));
        sql.selectDistinct(CLAIMS_FACT.CLAIM)
                .from(CLAIMS_FACT)
                .where(range.contains(FactTable.of(FactKind.CLAIMS)))
                .forEach(r -> found.add(SubjectKind.CLAIM, r.value1()));
        return found;
    }

    private void add(SubjectKind kind, String name) {
        subjects.add(Subject.of(kind, name));
    }

    /** Whether the subject, whatever part or step of it, belongs to the job. */
    public boolean contain(Subject subject) {
        return subjects.contains(Subject.of(subject.kind(), subject.name()));
    }
}
