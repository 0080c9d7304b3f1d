package counterbench.acts.rack;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.cores.CoreEvent;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Refused;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Closes a core. Plugs that lie on its job's bench go onto it in the same entry.
 *
 * @param quantity how many plugs; as many as it still needs where it is not said
 */
public record PlugCore(String tag, @Nullable Long quantity, Stamp stamp) implements Act {
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
        int plugs = NumberOfPlugs.of(core, quantity, () -> missing(core));
        PlugsFromBench bench = PlugsFromBench.of(core, plugs);
        List<FactRow> facts = new ArrayList<>();
        facts.add(core.row(CoreEvent.Kind.PLUGGED).with("quantity", BigDecimal.valueOf(plugs)));
        facts.addAll(bench.rows());
        List<String> remarks = new ArrayList<>();
        sayWhereDrainIsOpen(core, remarks);
        core.drainedTooShort(core.after(CoreEvent.Kind.PLUGGED)).ifPresent(remarks::add);
        sayWhereTooMany(core, plugs, remarks);
        bench.remark().ifPresent(remarks::add);
        return new Decision(facts, remarks);
    }

    private int missing(Handled core) {
        int wanted =
                core.terms()
                        .orElseThrow(
                                () ->
                                        new Refused(
                                                core.asked(),
                                                "its terms do not tell how many plugs it needs",
                                                "say how many: plug " + tag + " 2"))
                        .plugs();
        int in = core.history().plugs();
        if (in >= wanted) {
            throw new Refused(
                    core.asked(),
                    in + " of " + wanted + " plugs are in it already",
                    "if there are more, say how many are added: plug " + tag + " 1");
        }
        return wanted - in;
    }

    private void sayWhereDrainIsOpen(Handled core, List<String> remarks) {
        core.history()
                .drainOpenAt(stamp.at())
                .map(begun -> core.site().wallTime(begun))
                .ifPresent(
                        begun ->
                                remarks.add(
                                        "its drain begun at "
                                                + begun
                                                + " has no end; one that ends after the plugging"
                                                + " does not count: drain end "
                                                + tag
                                                + " --at TIME"));
    }

    private void sayWhereTooMany(Handled core, int plugs, List<String> remarks) {
        int in = core.history().plugs() + plugs;
        core.terms()
                .filter(terms -> in > terms.plugs())
                .ifPresent(
                        terms ->
                                remarks.add(
                                        in
                                                + " plugs are logged in it, and it needs "
                                                + terms.plugs()
                                                + "; if that is a slip, reverse this entry and"
                                                + " plug it anew"));
    }
}
