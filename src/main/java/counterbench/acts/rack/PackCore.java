package counterbench.acts.rack;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.cores.CoreEvent;
import counterbench.facts.FactKind;
import counterbench.shared.units.Weight;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Packs a core.
 *
 * @param packaging what into, such as {@code carton}
 * @param weight what it weighs so, if somebody put it on a scale
 */
public record PackCore(String tag, String packaging, @Nullable Weight weight, Stamp stamp)
        implements Act {
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
        return Decision.of(
                core.row(CoreEvent.Kind.PACKED)
                        .with("packaging", packaging)
                        .with("weight", weight == null ? null : weight.amount())
                        .with("weight_unit", weight == null ? null : weight.unit().symbol()));
    }
}
