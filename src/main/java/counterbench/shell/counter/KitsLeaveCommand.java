package counterbench.shell.counter;

import counterbench.acts.Act;
import counterbench.acts.Leaving;
import counterbench.acts.MoveKits;
import counterbench.acts.Stamp;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import java.util.function.Supplier;

/** Takes whole kits off the shelf otherwise than to a job. */
abstract class KitsLeaveCommand extends ActCommand {
    KitsLeaveCommand(Manual manual, Supplier<Store> store, SiteChoice sites) {
        super(manual, store, sites);
    }

    /** How they leave. */
    abstract Leaving leaving(Invocation in);

    @Override
    protected final Act act(Invocation in, Site site, Stamp stamp) {
        return new MoveKits(Scanned.kits(in, site), leaving(in), stamp);
    }
}
