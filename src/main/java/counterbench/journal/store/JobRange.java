package counterbench.journal.store;

import static counterbench.db.generated.Tables.JOB_NAME;

import counterbench.db.JobKey;
import java.util.Objects;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;

/** The keys of one job of a site. */
public record JobRange(int siteNo, int jobNo) {
    /** The keys of the job of that name; empty if the name was never written. */
    public static Optional<JobRange> find(DSLContext sql, int siteNo, String job) {
        return sql.select(JOB_NAME.JOB_NO)
                .from(JOB_NAME)
                .where(JOB_NAME.SITE_NO.eq((short) siteNo), JOB_NAME.JOB.eq(job))
                .fetchOptional(r -> new JobRange(siteNo, r.value1()));
    }

    /** Whether a row of a table in job order is the job's. */
    public Condition contains(FactTable table) {
        return Objects.requireNonNull(table.key())
                .between(JobKey.first(siteNo, jobNo), JobKey.last(siteNo, jobNo));
    }
}
