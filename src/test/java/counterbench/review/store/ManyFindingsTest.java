package counterbench.review.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.review.FindingId;
import counterbench.review.FindingState;
import counterbench.review.StatedFinding;
import java.time.Instant;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** More findings than memory holds at a time: files hand them over as lists in memory would. */
class ManyFindingsTest {
    private static final int MANY = 12_000;
    private static final long SEED = 4711;

    private final Random random = new Random(SEED);

    @Test
    void they_are_sorted_by_their_subjects_and_keep_all_that_they_say() {
        List<StatedFinding> findings = new ArrayList<>();
        for (int i = 0; i < MANY; i++) {
            Finding finding = finding(i);
            FindingState state = random.nextBoolean() ? FindingState.OPEN : FindingState.SETTLED;
            findings.add(new StatedFinding(FindingId.of(finding), finding, state));
        }
        Collections.shuffle(findings, random);
        List<StatedFinding> handed = new ArrayList<>();
        try (SortedFindings sorted = new SortedFindings()) {
            findings.forEach(sorted::add);
            sorted.each(handed::add);
        }
        findings.sort(StatedFinding.BY_SUBJECT);
        assertThat(handed).as("seed %d", SEED).isEqualTo(findings);
    }

    @Test
    void what_is_to_be_kept_comes_job_by_job_and_those_of_a_job_as_they_were_found() {
        Map<Integer, List<Finding>> expected = new TreeMap<>();
        Map<Integer, List<Finding>> handed = new TreeMap<>();
        List<Integer> jobs = new ArrayList<>();
        try (OutcomeToKeep outcome = new OutcomeToKeep()) {
            for (int i = 0; i < MANY; i++) {
                int job = 1 + random.nextInt(MANY / 4);
                Finding finding = finding(i);
                outcome.add(job, List.of(finding));
                expected.computeIfAbsent(job, j -> new ArrayList<>()).add(finding);
            }
            outcome.eachFinding(
                    (job, section, finding) -> {
                        jobs.add(job);
                        handed.computeIfAbsent(job, j -> new ArrayList<>()).add(finding);
                    });
            assertThat(outcome.count()).isEqualTo(MANY);
        }
        assertThat(jobs).as("seed %d", SEED).isSorted();
        assertThat(handed).isEqualTo(expected);
    }

    @Test
    void of_several_moments_of_a_job_the_first_is_kept() {
        Map<Integer, Instant> expected = new TreeMap<>();
        Map<Integer, Instant> handed = new TreeMap<>();
        try (OutcomeToKeep outcome = new OutcomeToKeep()) {
            for (int i = 0; i < MANY; i++) {
                int job = random.nextInt(MANY / 3);
                Instant moment = Instant.ofEpochSecond(random.nextInt(), random.nextInt(1_000_000));
                outcome.changesAt(job, moment);
                expected.merge(job, moment, (a, b) -> a.isBefore(b) ? a : b);
            }
            outcome.eachMoment((job, at) -> assertThat(handed.put(job, at)).isNull());
        }
        assertThat(handed).as("seed %d", SEED).isEqualTo(expected);
    }

    private Finding finding(int number) {
        Rule[] rules = Rule.values();
        SubjectKind[] kinds = SubjectKind.values();
        boolean plain = random.nextBoolean();
        return new Finding(
                rules[random.nextInt(rules.length)],
                random.nextBoolean() ? "NORTH" : "SOUTH",
                plain ? null : "QM-26-014",
                new Subject(
                        kinds[random.nextInt(kinds.length)],
                        "J-" + number,
                        plain ? "QM-4473" : null,
                        random.nextBoolean() ? "clamp" : null),
                plain ? YearMonth.of(2026, 1 + random.nextInt(12)) : null,
                "job J-" + number + ": 3 of 4 seal washers are new",
                "new 3, old 1 \u00b0C");
    }
}
