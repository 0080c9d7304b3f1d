package counterbench.shell.claims;

import counterbench.acts.store.ReadClaims;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shell.Invocation;
import java.util.List;

/** The refusal of a claim's number that no claim bears. */
final class UnknownClaim {
    private UnknownClaim() {}

    static Refused refused(Invocation in, Site site, String claim, ReadClaims claims) {
        return new Refused(
                "claim \"" + claim + "\"",
                "there is no such claim",
                NearMatch.of(claim, others(in, site, claim, claims))
                        .map(near -> "did you mean " + near + "?")
                        .orElse("claim list names them"));
    }

    /** One that was taken back keeps its number. */
    private static List<String> others(Invocation in, Site site, String claim, ReadClaims claims) {
        return claims.numbers(site, in.now()).stream().filter(n -> !n.equals(claim)).toList();
    }
}
