package counterbench.acts.rack;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.cores.CoreEvent;
import counterbench.facts.FactKind;
import java.util.ArrayList;
import java.util.List;

/** Opens a core to drain. Where a drain is open already, this one takes its place. */
public record BeginDrain(String tag, Stamp stamp) implements Act {
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
        List<String> remarks = new ArrayList<>();
        core.history()
                .drainToEndAt(stamp.at())
                .map(begun -> core.site().wallTime(begun))
                .ifPresent(
                        begun ->
                                remarks.add(
                                        "the drain begun at "
                                                + begun
                                                + " counts no more from here on; time runs anew"));
        int plugs = core.history().plugsAt(stamp.at());
        if (plugs > 0) {
            remarks.add(
                    (plugs == 1 ? "1 plug is" : plugs + " plugs are")
                            + " in it, and a closed core does not drain: unplug "
                            + tag);
        }
        return new Decision(List.of(core.row(CoreEvent.Kind.DRAIN_BEGUN)), remarks);
    }
}
