package counterbench.review;

import counterbench.cores.CoreHistory;
import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.shared.Site;
import counterbench.stock.Ledger;
import counterbench.stock.rules.StockFacts;
import counterbench.stock.rules.StockRules;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Runs every rule over a component. The one evaluator, for a full review and for a few touched
 * jobs.
 */
public final class JudgeComponent {
    private final Site site;
    private final Terms terms;
    private final Instant asOf;
    private final LikeVehicles like = new LikeVehicles();

    public JudgeComponent(Site site, Terms terms, Instant asOf) {
        this.site = site;
        this.terms = terms;
        this.asOf = asOf;
    }

    /** Judges a component whose facts are cut at the moment of the review. */
    public JudgedComponent judge(Component component) {
        Ledger ledger = Ledger.of(component.facts());
        Findings ofKits = new Findings();
        run(StockRules.ALL, StockFacts.ofKits(site, component.facts(), ledger), ofKits);
        Map<String, List<Finding>> byJob = new LinkedHashMap<>();
        Set<String> doubtful = new TreeSet<>();
        Stream.Builder<Instant> moments = Stream.builder();
        component.nextFact().ifPresent(moments::add);
        for (JobFile file : component.jobs()) {
            Findings findings = new Findings();
            judge(file, component, ledger, findings, doubtful);
            byJob.put(file.name(), findings.found());
            findings.changesAt().ifPresent(moments::add);
        }
        Optional<Instant> changesAt = moments.build().min(Instant::compareTo);
        return new JudgedComponent(component, ledger, byJob, ofKits.found(), changesAt, doubtful);
    }

    private void judge(
            JobFile file,
            Component component,
            Ledger ledger,
            Findings findings,
            Set<String> doubtful) {
        JobCase jobCase = new JobCase(site, terms, asOf, file);
        List<CoreHistory> cores = jobCase.cores();
        new JudgeWork(jobCase, component, ledger, like).judge(findings);
        new JudgeReturns(jobCase, cores).judge(findings);
        jobCase.termsChangeAt().ifPresent(findings::changesAt);
        doubtful.addAll(jobCase.doubtfulShipments(cores));
    }

    /** Runs judges over the same facts. */
    static <F> void run(List<Judge<F>> judges, F facts, Findings findings) {
        judges.forEach(j -> j.judge(facts, findings));
    }
}
