package counterbench.review.store;

import counterbench.db.JobKey;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.impl.DSL;

/**
 * Runs of job numbers, which are ranges of keys.
 *
 * @param from the first number
 * @param to the last
 */
record Ranges(int from, int to) {
    /** The runs that some numbers make, in order. */
    static List<Ranges> of(Collection<Integer> jobNos) {
        List<Ranges> runs = new ArrayList<>();
        for (int no : new TreeSet<>(jobNos)) {
            Ranges last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
            if (last != null && last.to == no - 1) {
                runs.set(runs.size() - 1, new Ranges(last.from, no));
            } else {
                runs.add(new Ranges(no, no));
            }
        }
        return runs;
    }

    /** Whether a key belongs to one of some jobs. */
    static Condition of(Field<Long> key, int siteNo, Collection<Integer> jobNos) {
        return DSL.or(
                of(jobNos).stream()
                        .map(
                                r ->
                                        key.between(
                                                JobKey.first(siteNo, r.from),
                                                JobKey.last(siteNo, r.to)))
                        .toList());
    }
}
