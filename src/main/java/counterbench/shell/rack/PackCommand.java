package counterbench.shell.rack;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.rack.PackCore;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shared.units.Weight;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import counterbench.shell.acts.LiveNames;
import java.util.function.Supplier;

/** Record how a core was packed. */
public final class PackCommand extends ActCommand {
    private static final Option<String> PACKAGING =
            Option.of("packaging", "TEXT", Readings.TEXT, "what into, such as carton").asRequired();

    private static final Option<Weight> WEIGHT =
            Option.of("weight", "WEIGHT", Readings.WEIGHT, "what it weighs so, in kg or lb");

    public PackCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("pack", Group.CORE_RACK, "Record how a core was packed")
                        .takes(
                                RackOptions.TAG.completedBy(new LiveNames(store).cores()),
                                PACKAGING,
                                WEIGHT)
                        .example("pack NC-0076 --packaging carton")
                        .example("pack NC-0076 --packaging carton --weight \"7.4 kg\"")
                        .note(
                                "Whether it may travel, and how it is marked, is in the carrier's and the law's rules."),
                store,
                sites);
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new PackCore(
                in.get(RackOptions.TAG), in.get(PACKAGING), in.find(WEIGHT).orElse(null), stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return "core " + in.get(RackOptions.TAG) + " packed, " + in.get(PACKAGING);
    }
}
