package counterbench.acts.rack;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.cores.CoreEvent;
import counterbench.facts.FactKind;
import counterbench.shared.Refused;
import java.util.List;

/** Ends the drain period that is open; one that was too short is recorded, and said. */
public record EndDrain(String tag, Stamp stamp) implements Act {
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
        if (core.history().drainToEndAt(stamp.at()).isEmpty()) {
            throw new Refused(
                    core.asked(),
                    "no drain of it is open at " + core.site().wallTime(stamp.at()),
                    "begin one with drain begin " + tag + ", if need be with --at");
        }
        return new Decision(
                List.of(core.row(CoreEvent.Kind.DRAIN_ENDED)),
                core.drainedTooShort(core.after(CoreEvent.Kind.DRAIN_ENDED)).stream().toList());
    }
}
