package counterbench.shell.counter;

import counterbench.acts.Act;
import counterbench.acts.ReceivePart;
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

/** Takes in loose parts from the supplier. */
public final class PartReceiveCommand extends ActCommand {
    public PartReceiveCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of(
                        "part receive",
                        Group.PARTS_COUNTER,
                        "Take in loose parts from the supplier")
                .takes(
                        CounterOptions.PART.completedBy(names.parts()),
                        CounterOptions.QUANTITY,
                        CounterOptions.LOT,
                        CounterOptions.EXPIRES,
                        CounterOptions.COST,
                        CounterOptions.DOCUMENT)
                .example("part receive HB-3003 12 --lot R-93 --cost 2.10 --document DN-0209-N")
                .example("part receive HB-3015 50 --lot S-52 --expires 2026-09-30");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new ReceivePart(
                Scanned.part(in, site),
                in.get(CounterOptions.QUANTITY),
                new ReceivePart.Delivery(
                        Scanned.lot(in, site),
                        in.find(CounterOptions.EXPIRES)
                                .or(() -> Scanned.expiry(in, site))
                                .orElse(null),
                        in.find(CounterOptions.COST).orElse(null),
                        in.find(CounterOptions.DOCUMENT).orElse(null)),
                stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return Told.part(recorded) + " received";
    }
}
