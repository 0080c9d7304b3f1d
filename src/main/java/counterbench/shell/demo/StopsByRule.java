package counterbench.shell.demo;

import counterbench.judgement.Rule;
import counterbench.judgement.Severity;
import counterbench.review.FindingState;
import counterbench.review.StatedFinding;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The open stops of one rule.
 *
 * @param example the first of them
 */
record StopsByRule(Rule rule, int count, StatedFinding example) {
    /** Every rule that has some, in the order of rules. */
    static List<StopsByRule> of(Collection<StatedFinding> findings) {
        Map<Rule, List<StatedFinding>> byRule =
                findings.stream()
                        .filter(stated -> stated.state() == FindingState.OPEN)
                        .filter(s -> s.finding().rule().severity() == Severity.STOP)
                        .collect(
                                Collectors.groupingBy(
                                        stated -> stated.finding().rule(),
                                        TreeMap::new,
                                        Collectors.toList()));
        List<StopsByRule> stops = new ArrayList<>();
        byRule.forEach((rule, some) -> stops.add(new StopsByRule(rule, some.size(), some.get(0))));
        return List.copyOf(stops);
    }
}
