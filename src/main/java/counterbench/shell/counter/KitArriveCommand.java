package counterbench.shell.counter;

import counterbench.acts.Act;
import counterbench.acts.ArriveKits;
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

/** Takes in kits that another site sent. */
public final class KitArriveCommand extends ActCommand {
    public KitArriveCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("kit arrive", Group.PARTS_COUNTER, "Take in kits from another site")
                .takes(
                        CounterOptions.KITS.completedBy(names.kitsUnderWay()),
                        CounterOptions.FROM.completedBy(names.sites()),
                        CounterOptions.DOCUMENT)
                .example("kit arrive FP-1028 FP-1029 --from NORTH --document TR-0210");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new ArriveKits(
                Scanned.kits(in, site),
                in.get(CounterOptions.FROM),
                in.find(CounterOptions.DOCUMENT).orElse(null),
                stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return Told.kits(recorded) + " arrived from site " + in.get(CounterOptions.FROM);
    }
}
