package counterbench.job.rules;

import counterbench.judgement.Findings;
import counterbench.judgement.Rule;
import java.util.Set;

/**
 * A row of issues or uses names a kit that the site never received. One finding for each part of
 * such rows, and one for issues of whole kits.
 */
public final class KitUnknown extends HardwareJudge {
    public KitUnknown() {
        super(Rule.KIT_UNKNOWN);
    }

    @Override
    protected void judgeCompleted(HardwareFacts facts, Findings findings) {
        Set<String> known = facts.goods().kits().keySet();
        KitRows.all(facts)
                .where(kit -> !known.contains(kit))
                .forEach((part, kits) -> judge(facts, part, String.join(", ", kits), findings));
    }

    private void judge(HardwareFacts facts, String part, String kits, Findings findings) {
        boolean whole = part.equals(KitRows.WHOLE_KIT);
        String row = whole ? "was issued" : "is named for " + facts.named(part);
        String message = "kit %s %s, but was never received here".formatted(kits, row);
        find(facts, findings, whole ? null : part, message, "never received: " + kits);
    }
}
