package counterbench.acts.desk;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.claims.Credit;
import counterbench.claims.Money;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Refused;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

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
                shares.stream()
                        .map(share -> MatchRemark.of(share, situation.job(share.job())))
                        .flatMap(Optional::stream)
                        .toList());
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
        checkWhole(asked, share);
    }

    /** All of a line is shared out, to each claim once. */
    private void checkWhole(String asked, Share share) {
        List<Share> ofLine =
                shares.stream()
                        .filter(s -> s.credit().name().equals(share.credit().name()))
                        .toList();
        if (ofLine.stream().filter(s -> s.claim().equals(share.claim())).count() > 1) {
            throw new Refused(
                    asked,
                    "claim " + share.claim() + " is said more than once",
                    "say each claim once, with all that it gets");
        }
        BigDecimal whole = Money.sum(ofLine.stream().map(Share::amount).toList());
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
