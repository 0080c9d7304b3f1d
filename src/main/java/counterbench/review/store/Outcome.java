package counterbench.review.store;

import counterbench.judgement.Finding;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** What a judging found, and in which places it takes the place of what was found before. */
final class Outcome {
    /** The section of findings that belong to a job. */
    static final String OF_JOB = "";

    private boolean ofAll;
    private final Set<Integer> jobNos = new TreeSet<>();
    private final Set<String> sections = new TreeSet<>();
    private final List<Placed> findings = new ArrayList<>();
    private final Map<Integer, Instant> moments = new TreeMap<>();

    /** A finding under a job, or under a section of what belongs to none (job 0). */
    record Placed(int jobNo, String section, Finding finding) {}

    /** Everything that was found before goes. */
    void replaceAll() {
        ofAll = true;
    }

    boolean isOfAll() {
        return ofAll;
    }

    /** What was found of a job before goes. */
    void replaceJob(int jobNo) {
        jobNos.add(jobNo);
    }

    /** What was found in a section before goes. */
    void replaceSection(String section) {
        sections.add(section);
    }

    void add(int jobNo, List<Finding> found) {
        found.forEach(f -> findings.add(new Placed(jobNo, OF_JOB, f)));
    }

    void add(String section, List<Finding> found) {
        found.forEach(f -> findings.add(new Placed(0, section, f)));
    }

    /** Says when a job's outcome changes by itself. */
    void changesAt(int jobNo, Instant moment) {
        moments.merge(jobNo, moment, (a, b) -> a.isBefore(b) ? a : b);
    }

    Set<Integer> jobNos() {
        return jobNos;
    }

    Set<String> sections() {
        return sections;
    }

    List<Placed> findings() {
        return findings;
    }

    Map<Integer, Instant> moments() {
        return moments;
    }
}
