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

/** Throws kits away. */
public final class KitScrapCommand extends KitsLeaveCommand {
    public KitScrapCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of(
                        "kit scrap",
                        Group.PARTS_COUNTER,
                        "Throw kits away that are expired or spoilt")
                .takes(
                        CounterOptions.KITS.completedBy(names.kitsOnShelf()),
                        CounterOptions.REASON.asRequired())
                .example("kit scrap BS-0703 --reason \"last day was 13 March\"");
    }

    @Override
    Leaving leaving(Invocation in) {
        return new Leaving(StockEvent.Kind.SCRAPPED, null, null, in.get(CounterOptions.REASON));
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return Told.kits(recorded) + " scrapped";
    }
}
