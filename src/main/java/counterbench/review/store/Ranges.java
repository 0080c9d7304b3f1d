package counterbench.review.store;

import counterbench.db.JobKey;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import org.jooq.Condition;
import org.jooq.Field;

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

    /**
     * Whether a key belongs to one of the run's jobs. Ask run by run: H2 goes through the whole
     * table for several ranges at once.
     */
    Condition hold(Field<Long> key, int siteNo) {
        return key.between(JobKey.first(siteNo, from), JobKey.last(siteNo, to));
    }
}
