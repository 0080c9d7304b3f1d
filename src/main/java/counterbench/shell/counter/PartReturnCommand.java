package counterbench.shell.counter;

import counterbench.acts.Leaving;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.LiveNames;
import counterbench.stock.StockEvent;
import java.util.function.Supplier;

/** Sends loose parts back to the supplier. */
public final class PartReturnCommand extends PartLeaveCommand {
    public PartReturnCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of(
                        "part return", Group.PARTS_COUNTER, "Send loose parts back to the supplier")
                .takes(
                        CounterOptions.PART.completedBy(names.parts()),
                        CounterOptions.QUANTITY,
                        CounterOptions.LOT,
                        CounterOptions.DOCUMENT,
                        CounterOptions.REASON)
                .example("part return HB-3003 2 --lot R-93 --reason \"wrong size\"");
    }

    @Override
    Leaving leaving(Invocation in) {
        return new Leaving(
                StockEvent.Kind.RETURNED,
                null,
                in.find(CounterOptions.DOCUMENT).orElse(null),
                in.find(CounterOptions.REASON).orElse(null));
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return Told.part(recorded) + " sent back to the supplier";
    }
}
