package counterbench.review;

import counterbench.campaign.ClaimTerms;
import counterbench.campaign.CoreTerms;
import counterbench.campaign.Pack;
import counterbench.claims.Claim;
import counterbench.claims.ClaimFacts;
import counterbench.claims.Credit;
import counterbench.claims.rules.ClaimRules;
import counterbench.cores.CoreFacts;
import counterbench.cores.CoreHistory;
import counterbench.cores.DueCores;
import counterbench.cores.JobCoresFacts;
import counterbench.cores.rules.CoreRules;
import counterbench.cores.rules.JobCoresRules;
import counterbench.job.Job;
import counterbench.judgement.Findings;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Judges what a job sends back and asks for: its cores and its claims. */
final class JudgeReturns {
    private final JobCase jobCase;
    private final List<CoreHistory> cores;
    private final @Nullable Job job;
    private final Optional<Pack> pack;

    JudgeReturns(JobCase jobCase, List<CoreHistory> cores) {
        this.jobCase = jobCase;
        this.cores = cores;
        this.job = jobCase.file().job();
        this.pack = jobCase.pack();
    }

    void judge(Findings findings) {
        Optional<JobCoresFacts> together = together();
        together.ifPresent(facts -> JudgeComponent.run(JobCoresRules.ALL, facts, findings));
        cores.forEach(core -> JudgeComponent.run(CoreRules.ALL, facts(core), findings));
        for (Claim claim : jobCase.file().claims()) {
            JudgeComponent.run(ClaimRules.ALL, facts(claim, together), findings);
        }
    }

    private Optional<DueCores> due() {
        return pack.map(p -> new DueCores(p, jobCase.attributes()));
    }

    private Optional<JobCoresFacts> together() {
        Job known = job;
        return known == null
                ? Optional.empty()
                : due().map(due -> new JobCoresFacts(jobCase.site(), known, due, cores));
    }

    private CoreFacts facts(CoreHistory core) {
        @Nullable CoreTerms terms = due().flatMap(d -> d.termsOf(core.part())).orElse(null);
        return new CoreFacts(jobCase.site(), core, job, terms, sameSerial(core), jobCase.asOf());
    }

    private List<String> sameSerial(CoreHistory core) {
        String serial = core.serial();
        Set<String> twins =
                serial == null
                        ? Set.of()
                        : jobCase.terms().serialTwins().getOrDefault(serial, Set.of());
        return twins.stream().filter(tag -> !tag.equals(core.core())).toList();
    }

    private ClaimFacts facts(Claim claim, Optional<JobCoresFacts> together) {
        List<Claim> others =
                jobCase.file().claims().stream().filter(c -> !c.equals(claim)).toList();
        List<Credit> credits =
                jobCase.file().credits().stream()
                        .filter(c -> claim.claim().equals(c.claim()))
                        .toList();
        @Nullable ClaimTerms terms = pack.map(Pack::claim).orElse(null);
        boolean needsMet =
                terms == null
                        || together.filter(
                                        f ->
                                                f.meet(
                                                        terms.needs(),
                                                        jobCase.site().endOf(claim.submittedOn())))
                                .isPresent();
        return new ClaimFacts(
                jobCase.site(), claim, job, others, terms, needsMet, credits, jobCase.asOf());
    }
}
