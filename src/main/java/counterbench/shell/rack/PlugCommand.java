package counterbench.shell.rack;

import counterbench.acts.Act;
import counterbench.acts.CoreCase;
import counterbench.acts.Stamp;
import counterbench.acts.rack.PlugCore;
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

/** Record that plugs were put into a core. */
public final class PlugCommand extends ActCommand {
    private static final Argument<Long> QUANTITY =
            Argument.of(
                            "QUANTITY",
                            Readings.WHOLE_NUMBER,
                            "how many; all that it needs unless said")
                    .asOptional();

    public PlugCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("plug", Group.CORE_RACK, "Record that plugs were put into a core")
                        .takes(RackOptions.TAG.completedBy(new LiveNames(store).cores()), QUANTITY)
                        .example("plug NC-0076")
                        .example("plug NC-0076 2")
                        .note(
                                "Plugs that lie on the bench of its job go onto it by the book as well."),
                store,
                sites);
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new PlugCore(in.get(RackOptions.TAG), in.find(QUANTITY).orElse(null), stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return "core "
                + in.get(RackOptions.TAG)
                + " plugged, "
                + plugs(recorded.after().core(in.get(RackOptions.TAG)));
    }

    /** How many of its plugs are in a core. */
    static String plugs(CoreCase core) {
        int in = core.core().plugs();
        return core.terms()
                .map(terms -> in + " of " + terms.plugs() + " plugs in it")
                .orElse(in == 1 ? "1 plug in it" : in + " plugs in it");
    }
}
