package counterbench.shell.review;

import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.Severity;
import counterbench.review.FindingState;
import counterbench.review.StatedFinding;
import counterbench.review.store.JobSubjects;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Which findings a person wants to see.
 *
 * @param rules all of them where none is named
 * @param severities all of them where none is named
 * @param subjects by site, what belongs to the job that was named, if one was
 */
record ReviewFilter(
        Optional<String> campaign,
        List<Rule> rules,
        List<Severity> severities,
        Optional<YearMonth> month,
        Optional<FindingState> state,
        Optional<Map<String, JobSubjects>> subjects)
        implements Predicate<StatedFinding> {
    @Override
    public boolean test(StatedFinding stated) {
        Finding finding = stated.finding();
        return campaign.map(c -> c.equals(finding.campaign())).orElse(true)
                && (rules.isEmpty() || rules.contains(finding.rule()))
                && (severities.isEmpty() || severities.contains(finding.rule().severity()))
                && month.map(m -> m.equals(finding.month())).orElse(true)
                && state.map(s -> s == stated.state()).orElse(true)
                && subjects.map(jobs -> belongs(jobs, finding)).orElse(true);
    }

    private static boolean belongs(Map<String, JobSubjects> jobs, Finding finding) {
        JobSubjects job = jobs.get(finding.site());
        return job != null && job.contain(finding.subject());
    }
}
