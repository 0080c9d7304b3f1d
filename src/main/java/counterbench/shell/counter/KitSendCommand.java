package counterbench.shell.counter;

import counterbench.acts.Leaving;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.LiveNames;
import java.util.function.Supplier;

/** Sends kits to another site. */
public final class KitSendCommand extends KitsLeaveCommand {
    public KitSendCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("kit send", Group.PARTS_COUNTER, "Send kits to another site")
                .takes(
                        CounterOptions.KITS.completedBy(names.kitsOnShelf()),
                        CounterOptions.TO.completedBy(names.sites()),
                        CounterOptions.DOCUMENT)
                .example("kit send FP-1028 FP-1029 --to SOUTH --document TR-0210");
    }

    @Override
    Leaving leaving(Invocation in) {
        return Leaving.to(in.get(CounterOptions.TO), in.find(CounterOptions.DOCUMENT).orElse(null));
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return Told.kits(recorded) + " sent to site " + in.get(CounterOptions.TO);
    }
}
