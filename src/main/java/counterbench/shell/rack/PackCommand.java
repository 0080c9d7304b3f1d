package counterbench.shell.rack;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.rack.PackCore;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import java.util.function.Supplier;

/** Record how a core was packed. */
public final class PackCommand extends ActCommand {
    private static final Argument<String> TAG = Argument.of("TAG", Readings.TEXT, "the core's tag");
    private static final Option<String> PACKAGING =
            Option.of("packaging", "TEXT", Readings.TEXT, "what into, such as carton").asRequired();

    public PackCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("pack", Group.CORE_RACK, "Record how a core was packed")
                        .takes(TAG, PACKAGING)
                        .example("pack NC-0076 --packaging carton")
                        .note(
                                "Whether it may travel, and how it is marked, is in the carrier's and the law's rules."),
                store,
                sites);
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new PackCore(in.get(TAG), in.get(PACKAGING), stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return "core " + in.get(TAG) + " packed, " + in.get(PACKAGING);
    }
}
