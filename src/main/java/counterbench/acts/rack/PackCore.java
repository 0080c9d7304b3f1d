package counterbench.acts.rack;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.cores.CoreEvent;
import counterbench.facts.FactKind;
import java.util.List;

/**
 * Packs a core.
 *
 * @param packaging what into, such as {@code carton}
 */
public record PackCore(String tag, String packaging, Stamp stamp) implements Act {
    @Override
    public FactKind makes() {
        return FactKind.CORES;
    }

    @Override
    public Named named() {
        return Named.NOTHING.withCores(List.of(tag));
    }

    @Override
    public Decision decide(Situation situation) {
        Handled core = Handled.of(tag, situation, stamp);
        return Decision.of(core.row(CoreEvent.Kind.PACKED).with("packaging", packaging));
    }
}
