package counterbench.care.store;

import static counterbench.db.generated.Tables.CORE_TAG;

import counterbench.facts.FactKind;
import counterbench.journal.store.FactTable;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jooq.Record;

/** Holds facts against the cores that they name: each was removed, on a job that is there. */
final class CoreReferences {
    private static final FactTable CORES = FactTable.of(FactKind.CORES);
    private static final FactTable USES = FactTable.of(FactKind.USES);

    private final CountingRows rows;
    private final JobReferences jobs;
    private final FirstBroken broken;
    private final Map<String, Set<Integer>> jobsOfCore = new HashMap<>();
    private final Map<String, Integer> tags = new HashMap<>();
    private final Set<String> removed = new HashSet<>();

    CoreReferences(CountingRows rows, JobReferences jobs, FirstBroken broken) {
        this.rows = rows;
        this.jobs = jobs;
        this.broken = broken;
    }

    void check() {
        rows.sql()
                .select(CORE_TAG.CORE, CORE_TAG.JOB_NO)
                .from(CORE_TAG)
                .where(CORE_TAG.SITE_NO.eq((short) rows.site().no()))
                .forEach(r -> tags.put(r.value1(), r.value2()));
        // A removal that was taken back still says where facts before that were put.
        new CountingRows(rows.sql(), rows.site(), (site, batch, line) -> true)
                .each(FactKind.CORES, this::learn, "core", "event");
        rows.each(FactKind.CORES, this::checkRemoval, "core", "event", "job");
        rows.each(FactKind.CORES, this::checkOther, "core", "event");
        rows.each(FactKind.USES, this::checkUse, "core");
    }

    private static boolean isRemoval(Record row) {
        return "removed".equals(row.get(CORES.text("event")));
    }

    private static String coreIn(Record row) {
        return row.get(CORES.text("core"));
    }

    private void learn(Record row) {
        if (isRemoval(row)) {
            jobsOfCore
                    .computeIfAbsent(coreIn(row), c -> new HashSet<>())
                    .add(JobReferences.numberIn(CORES, row));
        }
    }

    private void checkRemoval(Record row) {
        if (!isRemoval(row)) {
            return;
        }
        removed.add(coreIn(row));
        if (jobs.lies(CORES, row) && !jobs.isPresent(JobReferences.numberIn(CORES, row))) {
            note(
                    CORES,
                    row,
                    "names job \"" + row.get(CORES.text("job")) + "\", which is not there");
        }
        Integer tagged = tags.get(coreIn(row));
        if (tagged == null || !jobsOfCore.getOrDefault(coreIn(row), Set.of()).contains(tagged)) {
            note(CORES, row, "removed core \"" + coreIn(row) + "\", whose tag leads elsewhere");
        }
    }

    private void checkOther(Record row) {
        if (isRemoval(row)) {
            return;
        }
        String core = coreIn(row);
        Set<Integer> places = jobsOfCore.getOrDefault(core, Set.of());
        if (!removed.contains(core)) {
            note(CORES, row, "names core \"" + core + "\", which was never removed");
        } else if (!places.contains(JobReferences.numberIn(CORES, row))) {
            note(CORES, row, "names core \"" + core + "\" and lies under another job");
        }
    }

    private void checkUse(Record row) {
        String core = row.get(USES.text("core"));
        if (core != null && !removed.contains(core)) {
            note(USES, row, "names core \"" + core + "\", which was never removed");
        }
    }

    private void note(FactTable table, Record row, String why) {
        broken.note(row.get(table.batch()), row.get(table.line()), why);
    }
}
