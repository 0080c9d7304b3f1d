package counterbench.shell.counter;

import counterbench.acts.Act;
import counterbench.acts.ArrivePart;
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

/** Takes in loose parts that another site sent. */
public final class PartArriveCommand extends ActCommand {
    public PartArriveCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of(
                        "part arrive", Group.PARTS_COUNTER, "Take in loose parts from another site")
                .takes(
                        CounterOptions.PART.completedBy(names.parts()),
                        CounterOptions.QUANTITY,
                        CounterOptions.FROM.completedBy(names.sites()),
                        CounterOptions.LOT,
                        CounterOptions.DOCUMENT)
                .example("part arrive HB-3003 6 --from NORTH --document TR-0112")
                .note("Lots are those that were sent, unless --lot says one.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new ArrivePart(
                Scanned.part(in, site),
                in.get(CounterOptions.QUANTITY),
                Scanned.lot(in, site),
                in.get(CounterOptions.FROM),
                in.find(CounterOptions.DOCUMENT).orElse(null),
                stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return Told.part(recorded) + " arrived from site " + in.get(CounterOptions.FROM);
    }
}
