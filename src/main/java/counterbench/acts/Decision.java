package counterbench.acts;

import counterbench.facts.FactRow;
import java.util.List;

/**
 * What an act comes to.
 *
 * @param facts what to record, at least one
 * @param remarks what the person should know besides, such as a kit that expires sooner
 */
public record Decision(List<FactRow> facts, List<String> remarks) {
    public Decision {
        facts = List.copyOf(facts);
        remarks = List.copyOf(remarks);
        if (facts.isEmpty()) {
            throw new IllegalArgumentException("an act that makes no fact");
        }
    }

    /** Facts about which there is nothing more to say. */
    public static Decision of(FactRow... facts) {
        return new Decision(List.of(facts), List.of());
    }
}
