package counterbench.review;

import counterbench.job.JudgedJob;
import counterbench.job.rules.HardwareFacts;
import counterbench.shared.Site;
import counterbench.stock.Ledger;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The hardware of completed jobs exactly as the rules judge it, for those who account for it. */
public final class HardwareOfJobs {
    private final Site site;
    private final Terms terms;
    private final Instant asOf;
    private final LikeVehicles like = new LikeVehicles();

    public HardwareOfJobs(Site site, Terms terms, Instant asOf) {
        this.site = site;
        this.terms = terms;
        this.asOf = asOf;
    }

    /** Of each completed job of a component that a pack governs. */
    public List<HardwareFacts> completed(Component component, Ledger ledger) {
        return component.jobs().stream()
                .flatMap(file -> completed(file, component, ledger).stream())
                .toList();
    }

    private Optional<HardwareFacts> completed(JobFile file, Component component, Ledger ledger) {
        JobCase jobCase = new JobCase(site, terms, asOf, file);
        JudgeWork work = new JudgeWork(jobCase, component, ledger, like);
        return jobCase.job()
                .map(job -> new JudgedJob(site, job, asOf))
                .filter(JudgedJob::isCompleted)
                .flatMap(judged -> jobCase.pack().map(pack -> work.hardware(judged, pack)));
    }
}
