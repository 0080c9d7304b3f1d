package counterbench.review.store;

import counterbench.judgement.Finding;
import counterbench.spool.SpooledRows;
import java.io.Closeable;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** What is to take the place of what was kept; temporary files hold what memory should not. */
final class OutcomeToKeep implements Outcome, Closeable {
    /** The section of findings that belong to a job. */
    private static final String OF_JOB = "";

    private boolean ofAll;
    private int count;
    private final Set<Integer> jobNos = new TreeSet<>();
    private final Set<String> sections = new TreeSet<>();
    private final SpooledRows findings = new SpooledRows();
    private final SpooledRows moments = new SpooledRows();

    /** Takes findings under a job, or under a section of what belongs to none (job 0). */
    interface Taker {
        void take(int jobNo, String section, Finding finding);
    }

    /** Takes the moments at which jobs' outcomes change by themselves. */
    interface MomentTaker {
        void take(int jobNo, Instant moment);
    }

    @Override
    public void replaceAll() {
        ofAll = true;
    }

    /** Whether everything that was found before goes. */
    boolean isOfAll() {
        return ofAll;
    }

    @Override
    public void replaceJob(int jobNo) {
        if (!ofAll) {
            jobNos.add(jobNo);
        }
    }

    @Override
    public void replaceSection(String section) {
        sections.add(section);
    }

    @Override
    public void add(int jobNo, List<Finding> found) {
        found.forEach(finding -> add(jobNo, OF_JOB, finding));
    }

    @Override
    public void add(String section, List<Finding> found) {
        found.forEach(finding -> add(0, section, finding));
    }

    private void add(int jobNo, String section, Finding finding) {
        Map<String, @Nullable Object> cells = FindingCells.of(finding);
        cells.put("job_no", jobNo);
        cells.put("section", section);
        findings.add(List.of(jobNo), cells);
        count++;
    }

    @Override
    public void changesAt(int jobNo, Instant moment) {
        Map<String, Object> cells = new HashMap<>();
        cells.put("job_no", jobNo);
        cells.put("moment", moment);
        moments.add(List.of(jobNo, moment), cells);
    }

    /** The jobs of which what was found before goes; none where all of it does. */
    Set<Integer> jobNos() {
        return jobNos;
    }

    /** The sections in which what was found before goes. */
    Set<String> sections() {
        return sections;
    }

    /** How many findings there are. */
    int count() {
        return count;
    }

    /** Hands the findings over, in the order of jobs. */
    void eachFinding(Taker taker) {
        findings.each(
                cells ->
                        taker.take(
                                jobNo(cells),
                                String.valueOf(cells.get("section")),
                                FindingCells.finding(cells)));
    }

    /** Hands over the first moment of each job that has one, in the order of jobs. */
    void eachMoment(MomentTaker taker) {
        int[] last = {-1};
        moments.each(
                cells -> {
                    int jobNo = jobNo(cells);
                    if (jobNo != last[0]) {
                        last[0] = jobNo;
                        taker.take(jobNo, (Instant) Objects.requireNonNull(cells.get("moment")));
                    }
                });
    }

    private static int jobNo(Map<String, ? extends @Nullable Object> cells) {
        return ((Number) Objects.requireNonNull(cells.get("job_no"))).intValue();
    }

    @Override
    public void close() {
        findings.close();
        moments.close();
    }
}
