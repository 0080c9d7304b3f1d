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

/** Throws loose parts away. */
public final class PartScrapCommand extends PartLeaveCommand {
    public PartScrapCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of(
                        "part scrap",
                        Group.PARTS_COUNTER,
                        "Throw loose parts away that are expired or spoilt")
                .takes(
                        CounterOptions.PART.completedBy(names.parts()),
                        CounterOptions.QUANTITY,
                        CounterOptions.LOT,
                        CounterOptions.REASON.asRequired())
                .example("part scrap HB-3015 10 --lot S-41 --reason \"last day was 31 January\"");
    }

    @Override
    Leaving leaving(Invocation in) {
        return new Leaving(StockEvent.Kind.SCRAPPED, null, null, in.get(CounterOptions.REASON));
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return Told.part(recorded) + " scrapped";
    }
}
