package counterbench.job.rules;

import counterbench.campaign.ClaimTerms;
import counterbench.campaign.Condition;
import counterbench.campaign.CoreTerms;
import counterbench.campaign.KitLine;
import counterbench.campaign.KitTerms;
import counterbench.campaign.Pack;
import counterbench.campaign.Step;
import counterbench.job.CompletedJobJudge;
import counterbench.judgement.Findings;
import counterbench.judgement.Rule;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Some condition of the pack asks for an attribute that the job's vehicle does not have. One
 * finding for the job, naming every such attribute.
 */
public final class ConditionUnknown extends CompletedJobJudge<VehicleFacts> {
    public ConditionUnknown() {
        super(Rule.CONDITION_UNKNOWN);
    }

    @Override
    protected void judgeCompleted(VehicleFacts facts, Findings findings) {
        SortedSet<String> lacking = askedOf(facts.pack());
        lacking.removeAll(facts.attributes().keySet());
        if (!lacking.isEmpty()) {
            String names = String.join(", ", lacking);
            String message = "the campaign asks for %s, which vehicle %s lacks";
            findings.add(
                    facts.judged()
                            .finding(
                                    rule(),
                                    message.formatted(names, facts.judged().job().vin()),
                                    "lacking " + names));
        }
    }

    private static SortedSet<String> askedOf(Pack pack) {
        SortedSet<String> asked = new TreeSet<>();
        conditions(pack).forEach(when -> asked.addAll(when.answers().keySet()));
        // Labour may also depend on the outcome, which is the job's and not the vehicle's.
        asked.remove("outcome");
        return asked;
    }

    private static Stream<Condition> conditions(Pack pack) {
        Stream<Condition> lines =
                pack.kits().stream().flatMap(k -> k.contents().stream()).map(KitLine::when);
        return Stream.of(
                        pack.kits().stream().map(KitTerms::when),
                        lines,
                        pack.procedure().stream().map(Step::when),
                        pack.cores().stream().map(CoreTerms::when),
                        operations(pack))
                .flatMap(conditions -> conditions);
    }

    private static Stream<Condition> operations(Pack pack) {
        ClaimTerms claim = pack.claim();
        return claim == null
                ? Stream.empty()
                : claim.operations().stream().map(ClaimTerms.Operation::when);
    }
}
