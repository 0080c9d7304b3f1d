package counterbench.cores.rules;

import counterbench.campaign.CoreTerms;
import counterbench.cores.CoreEvent;
import counterbench.cores.CoreFacts;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;

/**
 * A core was last packed otherwise than its terms say, or in what was not said. A core that no fact
 * packs, and terms that name no packaging, are not judged.
 */
public final class CorePackaging implements Judge<CoreFacts> {
    @Override
    public Rule rule() {
        return Rule.CORE_PACKAGING;
    }

    @Override
    public void judge(CoreFacts facts, Findings findings) {
        CoreTerms terms = facts.terms();
        String wanted = terms == null ? null : terms.packaging();
        if (wanted != null) {
            facts.history()
                    .lastPacked()
                    .filter(packed -> !wanted.equals(packed.packaging()))
                    .ifPresent(packed -> add(facts, wanted, packed, findings));
        }
    }

    private void add(CoreFacts facts, String wanted, CoreEvent packed, Findings findings) {
        String said = packed.packaging();
        String was = said == null ? "not said" : "\"" + said + "\"";
        findings.add(
                facts.finding(
                        rule(),
                        "packaging is " + was + ", \"" + wanted + "\" required",
                        "required \"" + wanted + "\", packed " + was));
    }
}
