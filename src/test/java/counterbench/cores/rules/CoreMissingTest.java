package counterbench.cores.rules;

import static counterbench.cores.CoreStory.SITE;
import static counterbench.cores.CoreStory.completedJob;
import static counterbench.cores.CoreStory.job;
import static counterbench.cores.CoreStory.openJob;
import static counterbench.cores.CoreStory.untold;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.Condition;
import counterbench.campaign.CoreTerms;
import counterbench.campaign.Pack;
import counterbench.cores.CoreHistory;
import counterbench.cores.CoreStory;
import counterbench.cores.DueCores;
import counterbench.cores.JobCoresFacts;
import counterbench.job.Job;
import counterbench.job.Outcome;
import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class CoreMissingTest {
    private static final Job DONE = completedJob("2026-03-31T23:59");
    private static final CoreTerms TWO_PUMPS = line("QM-1", 2, Condition.ALWAYS);
    private static final CoreTerms COOLER =
            line("QM-2", 1, new Condition(Map.of("transmission", "automatic")));

    private static CoreTerms line(String part, int quantity, Condition when) {
        return new CoreTerms(part, quantity, when, BigDecimal.TEN, 1, null, null, BigDecimal.ZERO);
    }

    private static CoreHistory core(String tag, @Nullable String part) {
        return untold(tag).removed("J-1", null, part, "2026-03-05T09:00").history();
    }

    private static List<Finding> judged(
            Job job, Map<String, String> attributes, CoreHistory... cores) {
        Pack pack =
                new Pack(
                        "QM-26-014",
                        "Pumps",
                        "A",
                        LocalDate.parse("2026-02-02"),
                        true,
                        new TreeMap<>(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(TWO_PUMPS, COOLER),
                        null);
        Findings findings = new Findings();
        DueCores due = new DueCores(pack, attributes);
        new CoreMissing().judge(new JobCoresFacts(SITE, job, due, List.of(cores)), findings);
        return findings.found();
    }

    @Test
    void fewer_cores_than_wanted_are_a_finding_on_the_job_in_its_month() {
        assertThat(judged(DONE, Map.of("transmission", "manual"), core("C-1", "QM-1")))
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.message()).isEqualTo("job J-1: 1 of 2 cores removed");
                            assertThat(f.evidence()).isEqualTo("wanted 2, removed 1");
                            assertThat(f.month()).isEqualTo(YearMonth.of(2026, 3));
                            assertThat(f.subject().name()).isEqualTo("J-1");
                            assertThat(f.campaign()).isEqualTo("QM-26-014");
                        });
    }

    @Test
    void as_many_cores_as_wanted_or_more_are_in_order() {
        Map<String, String> manual = Map.of("transmission", "manual");
        assertThat(judged(DONE, manual, core("C-1", null), core("C-2", "QM-1"))).isEmpty();
        assertThat(judged(DONE, manual, core("C-1", null), core("C-2", null), core("C-3", null)))
                .isEmpty();
    }

    @Test
    void lines_for_the_vehicle_add_up() {
        assertThat(
                        judged(
                                DONE,
                                Map.of("transmission", "automatic"),
                                core("C-1", null),
                                core("C-2", null)))
                .singleElement()
                .returns("wanted 3, removed 2", Finding::evidence);
    }

    @Test
    void a_core_under_a_line_that_does_not_or_cannot_be_told_to_apply_stands_in_for_none() {
        assertThat(judged(DONE, Map.of(), core("C-1", "QM-1"), core("C-2", "QM-2"))).hasSize(1);
        assertThat(judged(DONE, Map.of(), core("C-1", "QM-1"), core("C-2", null))).isEmpty();
        Map<String, String> manual = Map.of("transmission", "manual");
        assertThat(judged(DONE, manual, core("C-1", "QM-1"), core("C-2", "QM-2"))).hasSize(1);
    }

    @Test
    void only_completed_jobs_are_judged() {
        assertThat(judged(openJob(), Map.of())).isEmpty();
        assertThat(judged(job(CoreStory.at("2026-03-05T12:00"), Outcome.ABANDONED), Map.of()))
                .isEmpty();
    }
}
