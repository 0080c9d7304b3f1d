package counterbench.acts.desk;

import counterbench.acts.JobState;
import counterbench.acts.desk.MatchCredits.Share;
import counterbench.claims.Claim;
import counterbench.claims.Credit;
import counterbench.claims.Money;
import counterbench.claims.Standing;
import counterbench.review.JobFile;
import java.util.List;
import java.util.Optional;

/** What a person should know of a credit and a claim that were matched. */
final class MatchRemark {
    private MatchRemark() {}

    /**
     * Of a share, if there is anything to know.
     *
     * @param job the claim's
     */
    static Optional<String> of(Share share, JobState job) {
        return job.file().claims().stream()
                .filter(claim -> claim.claim().equals(share.claim()))
                .findFirst()
                .flatMap(
                        claim ->
                                share.credit().kind() == Credit.Kind.CORE
                                        ? Optional.of(cleared(share, job))
                                        : doubt(share, claim, job.file()));
    }

    private static String cleared(Share share, JobState job) {
        String credit = "core credit " + share.credit().name();
        return job.creditedCore(share.credit().matchedTo(share.claim(), share.amount()))
                .map(core -> credit + " clears the charge of core " + core)
                .orElse(
                        credit
                                + " clears no core's charge: which core of job "
                                + job.name()
                                + " it is for cannot be told; reverse its line and import it with"
                                + " the core's tag");
    }

    private static Optional<String> doubt(Share share, Claim claim, JobFile file) {
        Standing standing = Standing.of(claim, besides(share.credit(), file));
        String named = "claim " + share.claim();
        if (!standing.stands()) {
            return Optional.of(named + " stands no more: it is " + standing.state().words());
        }
        if (share.credit().paidOn().isBefore(claim.submittedOn())) {
            return Optional.of(
                    named
                            + " was submitted on "
                            + claim.submittedOn()
                            + ", after that was paid; if it is not the one, reverse this entry");
        }
        return standing.open()
                .map(open -> open.subtract(share.amount()))
                .filter(left -> left.signum() < 0)
                .map(left -> named + " is paid " + Money.text(left.negate()) + " too much by that");
    }

    /** A line that names the claim itself counts for it already, and not twice once matched. */
    private static List<Credit> besides(Credit credit, JobFile file) {
        return file.credits().stream().filter(c -> !c.name().equals(credit.name())).toList();
    }
}
