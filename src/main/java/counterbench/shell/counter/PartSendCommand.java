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

/** Sends loose parts to another site. */
public final class PartSendCommand extends PartLeaveCommand {
    public PartSendCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("part send", Group.PARTS_COUNTER, "Send loose parts to another site")
                .takes(
                        CounterOptions.PART.completedBy(names.parts()),
                        CounterOptions.QUANTITY,
                        CounterOptions.LOT,
                        CounterOptions.TO.completedBy(names.sites()),
                        CounterOptions.DOCUMENT)
                .example("part send HB-3003 6 --to SOUTH --lot R-88");
    }

    @Override
    Leaving leaving(Invocation in) {
        return Leaving.to(in.get(CounterOptions.TO), in.find(CounterOptions.DOCUMENT).orElse(null));
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return Told.part(recorded) + " sent to site " + in.get(CounterOptions.TO);
    }
}
