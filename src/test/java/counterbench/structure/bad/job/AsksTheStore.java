package counterbench.structure.bad.job;

import org.jooq.DSLContext;

/** Bad on purpose: a rule that asks the store. */
public final class AsksTheStore {
    public int jobs(DSLContext sql) {
        return sql.fetchCount(sql.selectOne());
    }
}
