package counterbench.shell.rack;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.rack.UnplugCore;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import counterbench.shell.acts.LiveNames;
import java.util.function.Supplier;

/** Record that plugs were taken out of a core. */
public final class UnplugCommand extends ActCommand {
    private static final Argument<Long> QUANTITY =
            Argument.of("QUANTITY", Readings.WHOLE_NUMBER, "how many; all unless said")
                    .asOptional();

    public UnplugCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("unplug", Group.CORE_RACK, "Record that plugs were taken out of a core")
                        .takes(RackOptions.TAG.completedBy(new LiveNames(store).cores()), QUANTITY)
                        .example("unplug NC-0076")
                        .example("unplug NC-0076 1")
                        .note(
                                "Fuel and hydraulic fluid burn and can pierce skin. The maker's own procedure comes"
                                        + " first."),
                store,
                sites);
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new UnplugCore(in.get(RackOptions.TAG), in.find(QUANTITY).orElse(null), stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return "core "
                + in.get(RackOptions.TAG)
                + " unplugged, "
                + PlugCommand.plugs(recorded.after().core(in.get(RackOptions.TAG)));
    }
}
