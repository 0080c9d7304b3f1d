package counterbench.shell.counter;

import counterbench.acts.Act;
import counterbench.acts.ShortKit;
import counterbench.acts.Stamp;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import counterbench.shell.acts.LiveNames;
import java.util.function.Supplier;

/** Says what turned out to be missing from a kit. */
public final class KitShortCommand extends ActCommand {
    public KitShortCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("kit short", Group.PARTS_COUNTER, "Say that a kit came without something")
                .takes(
                        CounterOptions.KIT.completedBy(names.kits()),
                        CounterOptions.PART.completedBy(names.parts()),
                        CounterOptions.QUANTITY,
                        CounterOptions.REASON)
                .example("kit short RD-0529 HB-5124 1 --reason \"one clamp screw is not there\"")
                .note(
                        "For what is found missing later. What was missing on receipt is said with"
                                + " kit receive --missing.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new ShortKit(
                Scanned.kit(in, site, in.get(CounterOptions.KIT)),
                Scanned.part(in, site),
                in.get(CounterOptions.QUANTITY),
                in.find(CounterOptions.REASON).orElse(null),
                stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return Told.kits(recorded) + " is short of " + Told.part(recorded);
    }
}
