package counterbench.claims.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ClaimRulesTest {
    @Test
    void every_rule_about_claims_and_credits_is_judged_once_in_the_order_of_the_list() {
        Stream<Rule> claims = ClaimRules.ALL.stream().map(Judge::rule);
        Stream<Rule> credits = CreditRules.ALL.stream().map(Judge::rule);
        List<Rule> judged = Stream.concat(claims, credits).toList();
        assertThat(judged)
                .containsExactly(
                        Rule.CLAIMED_TWICE,
                        Rule.CLAIMED_LATE,
                        Rule.CLAIM_UNGROUNDED,
                        Rule.CLAIM_UNPAID,
                        Rule.PAID_DIFFERENTLY,
                        Rule.CREDIT_UNMATCHED);
    }
}
