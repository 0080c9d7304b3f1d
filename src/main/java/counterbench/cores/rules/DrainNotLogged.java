package counterbench.cores.rules;

import counterbench.campaign.CoreTerms;
import counterbench.cores.CoreFacts;
import counterbench.cores.DrainPeriods;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import counterbench.shared.Minutes;

/**
 * A core is packed, shipped or acknowledged and no ended drain period counts for it. Only cores
 * whose terms want a drain are judged.
 */
public final class DrainNotLogged implements Judge<CoreFacts> {
    @Override
    public Rule rule() {
        return Rule.DRAIN_NOT_LOGGED;
    }

    @Override
    public void judge(CoreFacts facts, Findings findings) {
        CoreTerms terms = facts.terms();
        if (terms == null || terms.drainMinutes().signum() <= 0 || !facts.history().isHandedOn()) {
            return;
        }
        DrainPeriods periods = facts.history().drainPeriods();
        if (periods.counted().isEmpty()) {
            String required = Minutes.text(terms.drainMinutes());
            int late = periods.logged().size();
            findings.add(
                    facts.finding(
                            rule(),
                            "no drain period is logged"
                                    + ignored(late)
                                    + ", "
                                    + required
                                    + " required",
                            "required " + required + ", counted 0, after plugging " + late));
        }
    }

    private static String ignored(int late) {
        return late == 0 ? "" : " that ended before it was plugged (" + late + " ended after)";
    }
}
