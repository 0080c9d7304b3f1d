package counterbench.acts.store;

import static counterbench.db.generated.Tables.CORE_TAG;
import static counterbench.db.generated.Tables.JOB_NAME;
import static counterbench.db.generated.Tables.KITS_FACT;

import counterbench.acts.Directory;
import counterbench.db.Store;
import java.util.List;

/** The names in the store. One that was recorded and taken back is still a name to propose. */
final class JooqDirectory implements Directory {
    private final Store store;
    private final short siteNo;

    JooqDirectory(Store store, int siteNo) {
        this.store = store;
        this.siteNo = (short) siteNo;
    }

    @Override
    public List<String> jobs() {
        return store.read(
                sql ->
                        sql.select(JOB_NAME.JOB)
                                .from(JOB_NAME)
                                .where(JOB_NAME.SITE_NO.eq(siteNo))
                                .fetch(JOB_NAME.JOB));
    }

    @Override
    public List<String> kits() {
        return store.read(
                sql ->
                        sql.selectDistinct(KITS_FACT.KIT)
                                .from(KITS_FACT)
                                .where(KITS_FACT.SITE_NO.eq(siteNo))
                                .fetch(KITS_FACT.KIT));
    }

    @Override
    public List<String> cores() {
        return store.read(
                sql ->
                        sql.select(CORE_TAG.CORE)
                                .from(CORE_TAG)
                                .where(CORE_TAG.SITE_NO.eq(siteNo))
                                .fetch(CORE_TAG.CORE));
    }
}
