package counterbench.job.rules;

import counterbench.judgement.Findings;
import counterbench.judgement.Rule;
import counterbench.stock.Issue;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** A use names a kit that the site received but did not issue to this job. */
public final class KitOfAnotherJob extends HardwareJudge {
    public KitOfAnotherJob() {
        super(Rule.KIT_OF_ANOTHER_JOB);
    }

    @Override
    protected void judgeCompleted(HardwareFacts facts, Findings findings) {
        Set<String> known = facts.goods().kits().keySet();
        Set<String> issued =
                facts.goods().issues().stream()
                        .map(Issue::kit)
                        .filter(Objects::nonNull)
                        .collect(Collectors.toSet());
        KitRows.uses(facts)
                .where(kit -> known.contains(kit) && !issued.contains(kit))
                .forEach((part, kits) -> judge(facts, part, String.join(", ", kits), findings));
    }

    private void judge(HardwareFacts facts, String part, String kits, Findings findings) {
        String message =
                "kit %s is named for %s, but was not issued to this job"
                        .formatted(kits, facts.named(part));
        find(facts, findings, part, message, "not issued to the job: " + kits);
    }
}
