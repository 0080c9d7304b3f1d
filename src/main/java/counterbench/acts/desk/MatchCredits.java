package counterbench.acts.desk;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.claims.Credit;
import counterbench.claims.Money;
import counterbench.claims.Standing;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.review.JobFile;
import counterbench.shared.Refused;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Says which claims some lines of remittances pay. */
public record MatchCredits(List<Share> shares, Stamp stamp) implements Act {
    public MatchCredits {
        shares = List.copyOf(shares);
    }

    /**
     * So much of a credit for a claim.
     *
     * @param job the claim's job
     * @param reason on what ground
     */
    public record Share(
            Credit credit, String claim, String job, BigDecimal amount, String reason) {}

    @Override
    public FactKind makes() {
        return FactKind.CREDITS;
    }

    @Override
    public Named named() {
        Set<String> jobs = new TreeSet<>();
        shares.forEach(share -> jobs.add(share.job()));
        return Named.NOTHING.withJobs(jobs);
    }

    @Override
    public Decision decide(Situation situation) {
        Set<String> matched = Set.copyOf(situation.directory().matchedCredits());
        shares.forEach(share -> check(share, situation, matched));
        return new Decision(
                shares.stream().map(this::row).toList(),
                shares.stream().flatMap(share -> doubt(share, situation).stream()).toList());
    }

    /** What the person should know of a pair that was taken all the same. */
    private static Optional<String> doubt(Share share, Situation situation) {
        JobFile file = situation.job(share.job()).file();
        return file.claims().stream()
                .filter(claim -> claim.claim().equals(share.claim()))
                .findFirst()
                .map(claim -> Standing.of(claim, besides(share.credit(), file)))
                .map(standing -> doubt(share, standing));
    }

    /** A line that names the claim itself counts for it already, and not twice once matched. */
    private static List<Credit> besides(Credit credit, JobFile file) {
        return file.credits().stream().filter(c -> !c.name().equals(credit.name())).toList();
    }

    private static @Nullable String doubt(Share share, Standing standing) {
        String claim = "claim " + share.claim();
        if (!standing.stands()) {
            return claim + " stands no more: it is " + standing.state().words();
        }
        if (share.credit().kind() == Credit.Kind.CORE) {
            return null;
        }
        return standing.open()
                .map(open -> open.subtract(share.amount()))
                .filter(left -> left.signum() < 0)
                .map(left -> claim + " is paid " + Money.text(left.negate()) + " too much by that")
                .orElse(null);
    }

    private void check(Share share, Situation situation, Set<String> matched) {
        String asked = "credit \"" + share.credit().name() + "\"";
        if (matched.contains(share.credit().name())) {
            throw new Refused(
                    asked,
                    "it was matched already",
                    "if that is wrong, reverse that entry first (journal show)");
        }
        boolean isThere =
                situation.job(share.job()).file().claims().stream()
                        .anyMatch(c -> c.claim().equals(share.claim()));
        if (!isThere) {
            throw new Refused(asked, "there is no claim " + share.claim(), "claim list names them");
        }
        BigDecimal whole =
                shares.stream()
                        .filter(s -> s.credit().name().equals(share.credit().name()))
                        .map(Share::amount)
                        .reduce(BigDecimal.ZERO, BigDecimal::add);
        if (whole.compareTo(share.credit().amount()) != 0) {
            throw new Refused(
                    asked,
                    "its shares come to "
                            + Money.text(whole)
                            + ", and it is "
                            + Money.text(share.credit().amount()),
                    "share out all of it");
        }
    }

    private FactRow row(Share share) {
        return FactRow.of(FactKind.MATCHES)
                .with("remittance", share.credit().remittance())
                .with("line", share.credit().line())
                .with("claim", share.claim())
                .with("amount", share.amount())
                .with("at", stamp.at())
                .with(
                        "reason",
                        share.reason().substring(0, Math.min(share.reason().length(), 1000)));
    }
}
