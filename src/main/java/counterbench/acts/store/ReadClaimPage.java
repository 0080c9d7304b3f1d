package counterbench.acts.store;

import counterbench.acts.CoreCase;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.desk.ClaimLine;
import counterbench.acts.desk.ClaimPage;
import counterbench.acts.desk.ClaimPage.CoreCredit;
import counterbench.acts.rack.CoreCredits;
import counterbench.claims.Claim;
import counterbench.claims.Credit;
import counterbench.claims.Standing;
import counterbench.db.Store;
import counterbench.review.Component;
import counterbench.review.JobFile;
import counterbench.review.store.ReviewSite;
import counterbench.review.store.SiteScan;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Looks up one claim with all credits that concern it. */
public final class ReadClaimPage {
    private static final Comparator<Credit> BY_DAY =
            Comparator.comparing(Credit::paidOn).thenComparing(Credit::name);

    private final Store store;

    public ReadClaimPage(Store store) {
        this.store = store;
    }

    /** The claim of that number, if there is one that counts. */
    public Optional<ClaimPage> find(Site site, Instant now, String claim) {
        return new ReadClaims(store)
                .jobOf(site, claim)
                .flatMap(
                        job -> {
                            Situation situation =
                                    new ReadSituation(store).run(site, now, Named.job(job));
                            return situation.components().stream()
                                    .flatMap(c -> page(situation, c, claim).stream())
                                    .findFirst();
                        });
    }

    private Optional<ClaimPage> page(Situation situation, Component component, String number) {
        for (JobFile file : component.jobs()) {
            for (Claim claim : file.claims()) {
                if (claim.claim().equals(number)) {
                    return Optional.of(page(situation, component, file, claim));
                }
            }
        }
        return Optional.empty();
    }

    private ClaimPage page(Situation situation, Component component, JobFile file, Claim claim) {
        Standing standing = Standing.of(claim, file.credits());
        List<Credit> payments =
                file.credits().stream()
                        .filter(c -> claim.claim().equals(c.claim()))
                        .filter(c -> c.kind() != Credit.Kind.CORE)
                        .sorted(BY_DAY)
                        .toList();
        return new ClaimPage(
                new ClaimLine(standing, file.job()),
                payments,
                coreCredits(situation, component, file, claim));
    }

    private List<CoreCredit> coreCredits(
            Situation situation, Component component, JobFile file, Claim claim) {
        CoreCredits credits = ofNoClaim(situation);
        List<CoreCredit> found = new ArrayList<>();
        CoreCase.allOf(situation.site(), situation.now(), situation.terms(), component).stream()
                .filter(core -> core.job().name().equals(file.name()))
                .forEach(
                        core ->
                                credits.of(core).stream()
                                        .sorted(BY_DAY)
                                        .map(c -> new CoreCredit(core.core().core(), c))
                                        .forEach(found::add));
        List<Credit> ofCores = found.stream().map(CoreCredit::credit).toList();
        file.credits().stream()
                .filter(c -> c.kind() == Credit.Kind.CORE && claim.claim().equals(c.claim()))
                .filter(c -> !ofCores.contains(c))
                .sorted(BY_DAY)
                .map(c -> new CoreCredit(null, c))
                .forEach(found::add);
        return found;
    }

    private CoreCredits ofNoClaim(Situation situation) {
        CoreCredits credits = new CoreCredits(situation.site());
        try (SiteScan scan =
                new SiteScan(store, situation.site(), situation.now(), ReviewSite.NEWEST)) {
            scan.eachCreditOfNoClaim(credits::add);
        }
        return credits;
    }
}
