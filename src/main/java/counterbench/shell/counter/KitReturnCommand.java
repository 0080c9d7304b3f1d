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

/** Sends kits back to the supplier. */
public final class KitReturnCommand extends KitsLeaveCommand {
    public KitReturnCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("kit return", Group.PARTS_COUNTER, "Send kits back to the supplier")
                .takes(
                        CounterOptions.KITS.completedBy(names.kitsOnShelf()),
                        CounterOptions.DOCUMENT,
                        CounterOptions.REASON)
                .example("kit return RD-0529 --document RT-0224 --reason \"came incomplete\"");
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
        return Told.kits(recorded) + " sent back to the supplier";
    }
}
