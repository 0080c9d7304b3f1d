package counterbench.review.store;

import static counterbench.db.generated.Tables.KIT_LINK;

import counterbench.db.generated.tables.KitLink;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/** Which jobs share kits, and what has been read of such jobs while the others are awaited. */
final class SharedKits {
    private final Map<Integer, SortedSet<Integer>> groups = new HashMap<>();
    private final Map<Integer, List<JobFiles.Part>> waiting = new TreeMap<>();

    private SharedKits() {}

    /** Reads the kits that more than one job of the site names. */
    static SharedKits of(DSLContext sql, int siteNo) {
        SharedKits shared = new SharedKits();
        shared.joinAll(namedByMany(sql, siteNo));
        return shared;
    }

    /** Reads the kits that any of some jobs names and another job, too, and theirs, and so on. */
    static SharedKits of(DSLContext sql, int siteNo, Set<Integer> jobNos) {
        SharedKits shared = new SharedKits();
        Set<Integer> known = new HashSet<>(jobNos);
        Deque<Integer> next = new ArrayDeque<>(jobNos);
        while (!next.isEmpty()) {
            int jobNo = next.remove();
            List<Integer> others = sharersOf(sql, siteNo, jobNo);
            if (!others.isEmpty()) {
                others.stream().filter(known::add).forEach(next::add);
                others.add(jobNo);
                shared.join(others);
            }
        }
        return shared;
    }

    /** The other jobs that name a kit which this one names. */
    private static List<Integer> sharersOf(DSLContext sql, int siteNo, int jobNo) {
        KitLink own = KIT_LINK.as("own");
        return sql.select(KIT_LINK.JOB_NO)
                .from(own)
                .join(KIT_LINK)
                .on(KIT_LINK.SITE_NO.eq(own.SITE_NO), KIT_LINK.KIT.eq(own.KIT))
                .where(own.SITE_NO.eq((short) siteNo), own.JOB_NO.eq(jobNo))
                .and(KIT_LINK.JOB_NO.ne(jobNo))
                .fetch(KIT_LINK.JOB_NO);
    }

    private static Collection<List<Integer>> namedByMany(DSLContext sql, int siteNo) {
        var several =
                DSL.select(KIT_LINK.KIT)
                        .from(KIT_LINK)
                        .where(KIT_LINK.SITE_NO.eq((short) siteNo))
                        .groupBy(KIT_LINK.KIT)
                        .having(DSL.count().gt(1));
        return sql.select(KIT_LINK.KIT, KIT_LINK.JOB_NO)
                .from(KIT_LINK)
                .where(KIT_LINK.SITE_NO.eq((short) siteNo), KIT_LINK.KIT.in(several))
                .orderBy(KIT_LINK.KIT, KIT_LINK.JOB_NO)
                .fetchGroups(KIT_LINK.KIT, KIT_LINK.JOB_NO)
                .values();
    }

    private void joinAll(Collection<List<Integer>> jobNosOfKits) {
        jobNosOfKits.stream().filter(jobNos -> jobNos.size() > 1).forEach(this::join);
    }

    private void join(List<Integer> jobNos) {
        SortedSet<Integer> group = new TreeSet<>(jobNos);
        jobNos.forEach(no -> group.addAll(groupOf(no)));
        group.forEach(no -> groups.put(no, group));
    }

    /** The numbers of the jobs in a job's component, its own included. */
    SortedSet<Integer> groupOf(int jobNo) {
        return groups.getOrDefault(jobNo, new TreeSet<>(Set.of(jobNo)));
    }

    /** Takes what was read of a job; gives all parts of its component once the last is there. */
    Optional<List<JobFiles.Part>> complete(int jobNo, JobFiles.Part part) {
        SortedSet<Integer> group = groups.get(jobNo);
        if (group == null) {
            return Optional.of(List.of(part));
        }
        waiting.computeIfAbsent(group.last(), g -> new ArrayList<>()).add(part);
        if (jobNo != group.last()) {
            return Optional.empty();
        }
        return Optional.ofNullable(waiting.remove(group.last()));
    }

    /** Gives and forgets what still waits for jobs that have no rows. */
    List<List<JobFiles.Part>> takeRest() {
        List<List<JobFiles.Part>> rest = new ArrayList<>(waiting.values());
        waiting.clear();
        return rest;
    }
}
