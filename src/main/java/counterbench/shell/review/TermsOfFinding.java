package counterbench.shell.review;

import counterbench.acts.CoreCase;
import counterbench.acts.JobState;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.store.ReadSituation;
import counterbench.campaign.Pack;
import counterbench.db.Store;
import counterbench.judgement.Finding;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.shared.Site;
import counterbench.shell.campaign.TermsText;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The terms by which a job or a core was judged. */
final class TermsOfFinding {
    private final Optional<Pack> pack;
    private final List<String> lines = new ArrayList<>();

    private TermsOfFinding(Optional<Pack> pack) {
        this.pack = pack;
    }

    /** Those behind a finding; none where it is on neither, or no pack judges the job. */
    static TermsOfFinding of(Finding finding, Store store, Site site, Instant now) {
        Subject subject = finding.subject();
        boolean isCore = subject.kind() == SubjectKind.CORE;
        if (!isCore && subject.kind() != SubjectKind.JOB) {
            return new TermsOfFinding(Optional.empty());
        }
        Named named =
                isCore
                        ? Named.NOTHING.withCores(List.of(subject.name()))
                        : Named.job(subject.name());
        Situation situation = new ReadSituation(store).latest(site, now, named);
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

    /** The pack that judges it. */
    Optional<Pack> pack() {
        return pack;
    }

    /** Which revision it is, and what that asks of the part, step or core in question. */
    Optional<String> words() {
        return pack.map(
                judging ->
                        judging.campaign()
                                + ", revision "
                                + judging.revision()
                                + (lines.isEmpty() ? "" : ": " + String.join(", ", lines)));
    }
}
