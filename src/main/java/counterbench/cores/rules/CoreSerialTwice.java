package counterbench.cores.rules;

import counterbench.cores.CoreFacts;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;

/** Another removed core bears the serial of this one. */
public final class CoreSerialTwice implements Judge<CoreFacts> {
    @Override
    public Rule rule() {
        return Rule.CORE_SERIAL_TWICE;
    }

    @Override
    public void judge(CoreFacts facts, Findings findings) {
        String serial = facts.history().serial();
        if (serial != null && !facts.sameSerial().isEmpty()) {
            String others = String.join(", ", facts.sameSerial());
            findings.add(
                    facts.finding(
                            rule(),
                            "serial " + serial + " is on core " + others + " as well",
                            "serial " + serial + ", also " + others));
        }
    }
}
