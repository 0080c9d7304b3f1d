package counterbench.shell.rack;

import counterbench.acts.Act;
import counterbench.acts.CoreCase;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.acts.rack.BeginDrain;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Minutes;
import counterbench.shared.Site;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import counterbench.shell.acts.LiveNames;
import java.util.function.Supplier;

/** Record that a core stands open to drain. */
public final class DrainBeginCommand extends ActCommand {

    public DrainBeginCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("drain begin", Group.CORE_RACK, "Record that a core stands open to drain")
                        .takes(RackOptions.TAG.completedBy(new LiveNames(store).cores()))
                        .example("drain begin NC-0076")
                        .example("drain begin NC-0076 --at \"2026-04-10 11:50\"")
                        .note(
                                "Fuel and hydraulic fluid burn and can pierce skin. The maker's own procedure comes"
                                        + " first.")
                        .note("A begin while a drain is open takes its place: time runs anew."),
                store,
                sites);
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new BeginDrain(in.get(RackOptions.TAG), stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        Situation after = recorded.after();
        CoreCase core = after.core(in.get(RackOptions.TAG));
        String drains = "core " + in.get(RackOptions.TAG) + " drains";
        return core.drainOver(after.now())
                .map(
                        over ->
                                drains
                                        + " until "
                                        + after.site().wallTime(Minutes.over(over))
                                        + required(core))
                .orElse(drains);
    }

    private static String required(CoreCase core) {
        return core.terms()
                .map(terms -> " (" + Minutes.text(terms.drainMinutes()) + ")")
                .orElse("");
    }
}
