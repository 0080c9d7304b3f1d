package counterbench.shell.counter;

import counterbench.acts.Act;
import counterbench.acts.Leaving;
import counterbench.acts.MovePart;
import counterbench.acts.Stamp;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import java.util.function.Supplier;

/** Takes loose parts out of the store otherwise than to a job. */
abstract class PartLeaveCommand extends ActCommand {
    PartLeaveCommand(Manual manual, Supplier<Store> store, SiteChoice sites) {
        super(manual, store, sites);
    }

    /** How they leave. */
    abstract Leaving leaving(Invocation in);

    @Override
    protected final Act act(Invocation in, Site site, Stamp stamp) {
        return new MovePart(
                Scanned.part(in, site),
                in.get(CounterOptions.QUANTITY),
                Scanned.lot(in, site),
                leaving(in),
                stamp);
    }
}
