package counterbench.shell.review;

import counterbench.acts.CoreCase;
import counterbench.acts.JobState;
import counterbench.acts.KitState;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.store.ReadClaims;
import counterbench.acts.store.ReadSituation;
import counterbench.campaign.ClaimTerms;
import counterbench.campaign.KitTerms;
import counterbench.campaign.Pack;
import counterbench.db.Store;
import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.shared.Site;
import counterbench.shell.campaign.TermsText;
import counterbench.stock.Kit;
import counterbench.stock.ReceivedKit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The terms by which a job, a core, a claim or a kit was judged. */
final class TermsOfFinding {
    private final Optional<Pack> pack;
    private final String whose;
    private final List<String> lines = new ArrayList<>();

    private TermsOfFinding(Optional<Pack> pack) {
        this(
                pack,
                pack.map(judging -> judging.campaign() + ", revision " + judging.revision())
                        .orElse(""));
    }

    private TermsOfFinding(Optional<Pack> pack, String whose) {
        this.pack = pack;
        this.whose = whose;
    }

    /** Those behind a finding; none where no pack and no patience of the site bears on it. */
    static TermsOfFinding of(Finding finding, Store store, Site site, Instant now) {
        TermsOfFinding terms = ofSubject(finding, store, site, now);
        return patience(finding.rule(), site.patience())
                .map(patience -> ofSite(terms.pack, site, patience))
                .orElse(terms);
    }

    private static TermsOfFinding ofSubject(Finding finding, Store store, Site site, Instant now) {
        Subject subject = finding.subject();
        return switch (subject.kind()) {
            case JOB, CORE -> ofWork(finding, store, site, now);
            case CLAIM -> ofClaim(finding, store, site, now);
            case KIT ->
                    ofKit(look(store, site, now, Named.NOTHING.withKit(subject.name())), subject);
            case CREDIT, ACCOUNT, SHIPMENT -> new TermsOfFinding(Optional.empty());
        };
    }

    private static Optional<String> patience(Rule rule, Site.Patience patience) {
        return switch (rule) {
            case JOB_IDLE -> Optional.of(patience.jobDays() + " days for an open job");
            case CORE_UNACKNOWLEDGED ->
                    Optional.of(patience.acknowledgementDays() + " days for an acknowledgement");
            case CLAIM_UNPAID -> Optional.of(patience.creditDays() + " days for a credit");
            default -> Optional.empty();
        };
    }

    private static TermsOfFinding ofSite(Optional<Pack> pack, Site site, String patience) {
        TermsOfFinding terms = new TermsOfFinding(pack, "patience of site " + site.site());
        terms.lines.add(patience);
        return terms;
    }

    private static Situation look(Store store, Site site, Instant now, Named named) {
        return new ReadSituation(store).latest(site, now, named);
    }

    private static TermsOfFinding ofWork(Finding finding, Store store, Site site, Instant now) {
        Subject subject = finding.subject();
        boolean isCore = subject.kind() == SubjectKind.CORE;
        Named named =
                isCore
                        ? Named.NOTHING.withCores(List.of(subject.name()))
                        : Named.job(subject.name());
        Situation situation = look(store, site, now, named);
        Optional<CoreCase> core = isCore ? situation.findCore(subject.name()) : Optional.empty();
        Optional<JobState> job =
                isCore ? core.map(CoreCase::job) : situation.findJob(subject.name());
        TermsOfFinding terms = new TermsOfFinding(job.flatMap(JobState::pack));
        core.flatMap(CoreCase::terms).ifPresent(due -> terms.lines.addAll(TermsText.of(due)));
        terms.pack.ifPresent(judging -> terms.addNamed(judging, subject));
        return terms;
    }

    private void addNamed(Pack judging, Subject subject) {
        Optional.ofNullable(subject.part())
                .flatMap(judging::line)
                .map(TermsText::of)
                .ifPresent(lines::add);
        Optional.ofNullable(subject.step())
                .flatMap(judging::step)
                .map(TermsText::of)
                .ifPresent(lines::add);
    }

    private static TermsOfFinding ofClaim(Finding finding, Store store, Site site, Instant now) {
        TermsOfFinding terms =
                new TermsOfFinding(
                        new ReadClaims(store)
                                .jobOf(site, finding.subject().name())
                                .flatMap(job -> look(store, site, now, Named.job(job)).findJob(job))
                                .flatMap(JobState::pack));
        terms.pack.map(Pack::claim).ifPresent(claim -> terms.addClaim(finding.rule(), claim));
        return terms.lines.isEmpty() ? new TermsOfFinding(Optional.empty()) : terms;
    }

    private void addClaim(Rule rule, ClaimTerms claim) {
        if (rule == Rule.CLAIMED_LATE) {
            TermsText.limit(claim).ifPresent(lines::add);
        } else if (rule == Rule.CLAIM_UNGROUNDED) {
            lines.add(TermsText.needs(claim));
        } else if (rule == Rule.PAID_DIFFERENTLY) {
            lines.addAll(TermsText.amounts(claim));
        }
    }

    private static TermsOfFinding ofKit(Situation situation, Subject subject) {
        Optional<ReceivedKit> kit = situation.findKit(subject.name()).map(KitState::received);
        TermsOfFinding terms =
                new TermsOfFinding(
                        Optional.empty(),
                        kit.map(received -> "contents of " + named(received.kit())).orElse(""));
        kit.map(ReceivedKit::terms)
                .map(KitTerms::contents)
                .map(contents -> contents.stream().map(TermsText::of))
                .map(contents -> contents.collect(Collectors.joining("; ")))
                .ifPresent(terms.lines::add);
        return terms;
    }

    private static String named(Kit kit) {
        return kit.kitPart() + (kit.revision() == null ? "" : ", revision " + kit.revision());
    }

    /** The pack that judges a job or a core. */
    Optional<Pack> pack() {
        return pack;
    }

    /** Which they are, and what they ask of what is in question. */
    Optional<String> words() {
        String asked = lines.isEmpty() ? "" : ": " + String.join(", ", lines);
        return whose.isEmpty() ? Optional.empty() : Optional.of(whose + asked);
    }
}
