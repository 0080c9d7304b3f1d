package counterbench.care.store;

import static counterbench.db.generated.Tables.JOB_NAME;
import static counterbench.db.generated.Tables.KIT_LINK;

import counterbench.db.JobKey;
import counterbench.facts.FactKind;
import counterbench.journal.store.FactTable;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jooq.DSLContext;
import org.jooq.Record;

/**
 * Holds facts against the jobs that they name: the job is there, and the fact lies under its
 * number, where the review looks for it.
 */
final class JobReferences {
    private final CountingRows rows;
    private final FirstBroken broken;
    private final Map<Integer, String> names = new HashMap<>();
    private final BitSet present = new BitSet();
    private final Set<String> links = new HashSet<>();

    JobReferences(CountingRows rows, FirstBroken broken) {
        this.rows = rows;
        this.broken = broken;
    }

    void check(Set<String> campaigns) {
        short siteNo = (short) rows.site().no();
        DSLContext sql = rows.sql();
        sql.select(JOB_NAME.JOB_NO, JOB_NAME.JOB)
                .from(JOB_NAME)
                .where(JOB_NAME.SITE_NO.eq(siteNo))
                .forEach(r -> names.put(r.value1(), r.value2()));
        sql.select(KIT_LINK.JOB_NO, KIT_LINK.KIT)
                .from(KIT_LINK)
                .where(KIT_LINK.SITE_NO.eq(siteNo))
                .forEach(r -> links.add(r.value1() + "/" + r.value2()));
        rows.each(FactKind.JOBS, row -> checkJob(row, campaigns), "job", "campaign", "vin");
        for (FactKind kind : List.of(FactKind.ISSUES, FactKind.USES)) {
            rows.each(kind, row -> checkHardware(kind, row), "job", "kit");
        }
        for (FactKind kind : List.of(FactKind.MARKS, FactKind.CLAIMS)) {
            rows.each(kind, row -> checkNamed(kind, row), "job");
        }
    }

    /** Whether a job is there that bears that number. */
    boolean isPresent(int jobNo) {
        return present.get(jobNo);
    }

    private void checkJob(Record row, Set<String> campaigns) {
        FactTable table = FactTable.of(FactKind.JOBS);
        if (lies(table, row)) {
            present.set(numberIn(table, row));
        }
        String campaign = row.get(table.text("campaign"));
        if (!campaigns.contains(campaign)) {
            note(table, row, "names campaign \"" + campaign + "\", of which no pack is loaded");
        }
    }

    private void checkHardware(FactKind kind, Record row) {
        checkNamed(kind, row);
        FactTable table = FactTable.of(kind);
        String kit = row.get(table.text("kit"));
        if (kit != null && !links.contains(numberIn(table, row) + "/" + kit)) {
            note(table, row, "names kit \"" + kit + "\", whose link to the job is missing");
        }
    }

    private void checkNamed(FactKind kind, Record row) {
        FactTable table = FactTable.of(kind);
        if (lies(table, row) && !present.get(numberIn(table, row))) {
            note(
                    table,
                    row,
                    "names job \"" + row.get(table.text("job")) + "\", which is not there");
        }
    }

    /** Whether a row lies under the number of the job that it names. */
    boolean lies(FactTable table, Record row) {
        String job = row.get(table.text("job"));
        boolean right = job != null && job.equals(names.get(numberIn(table, row)));
        if (!right) {
            note(table, row, "names job \"" + job + "\" and lies under another");
        }
        return right;
    }

    static int numberIn(FactTable table, Record row) {
        return JobKey.jobNo(row.get(Objects.requireNonNull(table.key())));
    }

    private void note(FactTable table, Record row, String why) {
        broken.note(row.get(table.batch()), row.get(table.line()), why);
    }
}
