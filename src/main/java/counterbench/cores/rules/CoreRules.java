package counterbench.cores.rules;

import counterbench.cores.CoreFacts;
import counterbench.judgement.Judge;
import java.util.List;

/** The rules that judge one core. */
public final class CoreRules {
    /** All of them, in the order of {@link counterbench.judgement.Rule}. */
    public static final List<Judge<CoreFacts>> ALL =
            List.of(
                    new DrainNotLogged(),
                    new DrainShort(),
                    new PlugsShort(),
                    new CorePackaging(),
                    new CoreOverdue(),
                    new CoreUnacknowledged(),
                    new CoreRejected(),
                    new CoreSerialTwice());

    private CoreRules() {}
}
