package counterbench.acts.desk;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.claims.Claim;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import java.time.LocalDate;
import java.util.List;

/**
 * Takes a claim back.
 *
 * @param job the claim's job
 * @param on from which day it stands no more
 */
public record WithdrawClaim(String claim, String job, LocalDate on, String reason, Stamp stamp)
        implements Act {
    @Override
    public FactKind makes() {
        return FactKind.CLAIMS;
    }

    @Override
    public Named named() {
        return Named.job(job);
    }

    @Override
    public Decision decide(Situation situation) {
        Claim known =
                situation.job(job).file().claims().stream()
                        .filter(c -> c.claim().equals(claim))
                        .findFirst()
                        .orElseThrow(() -> unknown(situation));
        known.fallsOn()
                .ifPresent(
                        day -> {
                            throw refused(
                                    "it stands no more since " + day, "nothing is left to do");
                        });
        if (on.isBefore(known.submittedOn())) {
            throw refused(
                    "it was submitted on " + known.submittedOn(), "say a later day with --on");
        }
        FactRow row =
                FactRow.of(FactKind.CLAIMS)
                        .with("claim", claim)
                        .with("job", job)
                        .with("submitted_on", known.submittedOn())
                        .with("withdrawn_on", on);
        if (known.reason() != null) {
            return new Decision(
                    List.of(row), List.of("the reason that it bears stays: " + known.reason()));
        }
        return Decision.of(row.with("reason", reason));
    }

    private Refused unknown(Situation situation) {
        return refused(
                "there is no such claim",
                NearMatch.of(claim, situation.directory().claims())
                        .map(near -> "did you mean " + near + "?")
                        .orElse("claim list names them"));
    }

    private Refused refused(String why, String todo) {
        return new Refused("claim \"" + claim + "\"", why, todo);
    }
}
