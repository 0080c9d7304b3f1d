package counterbench.job.rules;

import counterbench.job.JudgedJob;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import counterbench.shared.Site;
import java.time.Instant;
import java.time.LocalDate;

/**
 * A job is open for longer than the site's patience, whose last day ends at the site's midnight.
 * Such a job belongs to no month yet.
 */
public final class JobIdle implements Judge<JudgedJob> {
    @Override
    public Rule rule() {
        return Rule.JOB_IDLE;
    }

    @Override
    public void judge(JudgedJob judged, Findings findings) {
        if (!judged.isOpen()) {
            return;
        }
        Site site = judged.site();
        LocalDate opened = site.dayOf(judged.job().openedAt());
        LocalDate lastDay = opened.plusDays(site.patience().jobDays());
        Instant over = site.endOf(lastDay);
        if (judged.asOf().isBefore(over)) {
            findings.changesAt(over);
        } else {
            String message =
                    "open since %s, longer than %s days"
                            .formatted(opened, site.patience().jobDays());
            String evidence = "opened %s, patience until %s".formatted(opened, lastDay);
            findings.add(judged.finding(rule(), message, evidence));
        }
    }
}
