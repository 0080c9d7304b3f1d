package counterbench.shell.rack;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.rack.EndDrain;
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

/** Record that a drain is over. */
public final class DrainEndCommand extends ActCommand {

    public DrainEndCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("drain end", Group.CORE_RACK, "Record that a drain is over")
                        .takes(RackOptions.TAG.completedBy(new LiveNames(store).coresDraining()))
                        .example("drain end NC-0076")
                        .note(
                                "One that was too short is recorded as it was: unplug, drain again, plug."),
                store,
                sites);
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new EndDrain(in.get(RackOptions.TAG), stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return recorded.after()
                .core(in.get(RackOptions.TAG))
                .core()
                .drainPeriods()
                .longest()
                .map(time -> ended(in) + ", " + Minutes.text(time) + " at the longest")
                .orElse(ended(in));
    }

    private static String ended(Invocation in) {
        return "drain of core " + in.get(RackOptions.TAG) + " ended";
    }
}
