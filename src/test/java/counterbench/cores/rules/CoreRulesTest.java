package counterbench.cores.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CoreRulesTest {
    @Test
    void every_rule_about_cores_is_judged_once_in_the_order_of_the_list() {
        List<Rule> judged =
                Stream.of(
                                JobCoresRules.ALL.stream().map(Judge::rule),
                                CoreRules.ALL.stream().map(Judge::rule),
                                ShipmentRules.ALL.stream().map(Judge::rule))
                        .flatMap(rules -> rules)
                        .toList();
        assertThat(judged)
                .containsExactly(
                        Rule.CORE_MISSING,
                        Rule.DRAIN_NOT_LOGGED,
                        Rule.DRAIN_SHORT,
                        Rule.PLUGS_SHORT,
                        Rule.CORE_PACKAGING,
                        Rule.CORE_OVERDUE,
                        Rule.CORE_UNACKNOWLEDGED,
                        Rule.CORE_REJECTED,
                        Rule.CORE_SERIAL_TWICE,
                        Rule.ACKNOWLEDGEMENT_STRAY);
    }
}
