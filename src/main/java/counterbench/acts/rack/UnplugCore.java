package counterbench.acts.rack;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.cores.CoreEvent;
import counterbench.facts.FactKind;
import counterbench.shared.Refused;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Opens a core again. The plugs stay the core's by the book, since they go into it again.
 *
 * @param quantity how many plugs; all that are in it where it is not said
 */
public record UnplugCore(String tag, @Nullable Long quantity, Stamp stamp) implements Act {
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
        int in = Math.min(core.history().plugsAt(stamp.at()), core.history().plugs());
        int plugs = NumberOfPlugs.of(core, quantity, () -> in);
        if (in <= 0 || plugs > in) {
            throw new Refused(
                    core.asked() + (quantity == null ? "" : ", " + quantity + " plugs"),
                    (in <= 0 ? "no plug is" : in == 1 ? "1 plug is" : in + " plugs are")
                            + " in it at "
                            + core.site().wallTime(stamp.at()),
                    "record first what was plugged (plug), or say when with --at");
        }
        return Decision.of(
                core.row(CoreEvent.Kind.UNPLUGGED).with("quantity", BigDecimal.valueOf(plugs)));
    }
}
