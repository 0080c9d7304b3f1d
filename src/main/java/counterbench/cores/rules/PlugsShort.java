package counterbench.cores.rules;

import counterbench.campaign.CoreTerms;
import counterbench.cores.CoreFacts;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;

/** A core is packed, shipped or acknowledged with fewer plugs logged than required. */
public final class PlugsShort implements Judge<CoreFacts> {
    @Override
    public Rule rule() {
        return Rule.PLUGS_SHORT;
    }

    @Override
    public void judge(CoreFacts facts, Findings findings) {
        CoreTerms terms = facts.terms();
        if (terms == null || !facts.history().isHandedOn()) {
            return;
        }
        int plugs = facts.history().plugs();
        if (plugs < terms.plugs()) {
            findings.add(
                    facts.finding(
                            rule(),
                            plugs + " of " + terms.plugs() + " plugs are logged",
                            "required " + terms.plugs() + ", logged " + plugs));
        }
    }
}
