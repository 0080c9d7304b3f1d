package counterbench.acts.store;

import counterbench.acts.desk.CreditDesk;
import counterbench.claims.Claim;
import counterbench.claims.Credit;
import counterbench.claims.CreditFacts;
import counterbench.claims.matching.Candidate;
import counterbench.claims.matching.CreditedCore;
import counterbench.db.Store;
import counterbench.job.Job;
import counterbench.review.JobCase;
import counterbench.review.JobFile;
import counterbench.review.store.ReviewSite;
import counterbench.review.store.SiteScan;
import counterbench.shared.Site;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;

/** Looks up the lines of remittances that are to be matched, and all claims. */
public final class ReadCreditDesk {
    private final Store store;

    public ReadCreditDesk(Store store) {
        this.store = store;
    }

    /**
     * As of a moment.
     *
     * @param progress is told how many jobs have been gone through
     */
    public CreditDesk run(Site site, Instant now, LongConsumer progress) {
        List<Credit> credits = new ArrayList<>();
        List<Candidate> claims = new ArrayList<>();
        Map<String, String> jobs = new HashMap<>();
        long[] done = {0};
        try (SiteScan scan = new SiteScan(store, site, now, ReviewSite.NEWEST)) {
            scan.eachCreditOfNoClaim(facts -> addOfNoClaim(facts, credits));
            scan.all(
                    component -> {
                        for (JobFile file : component.jobs()) {
                            List<Candidate.Core> cores =
                                    new JobCase(site, scan.terms(), now, file).coreNames();
                            file.credits().stream()
                                    .filter(c -> !c.matched() && !isOfItsCore(c, cores))
                                    .forEach(credits::add);
                            for (Claim claim : file.claims()) {
                                jobs.put(claim.claim(), claim.job());
                                claims.add(candidate(claim, file, cores));
                            }
                        }
                        done[0] += component.jobs().size();
                        progress.accept(done[0]);
                    });
        }
        return new CreditDesk(credits, claims, jobs);
    }

    /** A core credit for a core that is known needs no claim. */
    private static void addOfNoClaim(CreditFacts facts, List<Credit> credits) {
        if (facts.credit().kind() != Credit.Kind.CORE || facts.core() == null) {
            credits.add(facts.credit());
        }
    }

    private static boolean isOfItsCore(Credit credit, List<Candidate.Core> cores) {
        return credit.kind() == Credit.Kind.CORE && CreditedCore.of(credit, cores).isPresent();
    }

    private static Candidate candidate(Claim claim, JobFile file, List<Candidate.Core> cores) {
        @Nullable Job job = file.job();
        BigDecimal credited =
                file.credits().stream()
                        .filter(c -> c.matched() && claim.claim().equals(c.claim()))
                        .filter(c -> c.kind() != Credit.Kind.CORE)
                        .map(Credit::amount)
                        .reduce(BigDecimal.ZERO, BigDecimal::add);
        return new Candidate(claim, job == null ? null : job.vin(), cores, credited);
    }
}
