package counterbench.claims;

import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.shared.Site;
import java.time.YearMonth;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What the rules read about one credit.
 *
 * @param claim the claim that it belongs to: the one that it names, if there is one of that name,
 *     or the one that a person matched it to
 * @param core the core that it names by tag or serial, if we know one
 */
public record CreditFacts(Site site, Credit credit, @Nullable String claim, @Nullable String core) {
    public CreditFacts {
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(credit, "credit");
    }

    /** A finding on the credit, in the month of its payment. */
    public Finding finding(Rule rule, String message, String evidence) {
        return new Finding(
                rule,
                site.site(),
                null,
                Subject.of(SubjectKind.CREDIT, credit.name()),
                YearMonth.from(credit.paidOn()),
                "credit " + credit.name() + ": " + message,
                evidence);
    }
}
