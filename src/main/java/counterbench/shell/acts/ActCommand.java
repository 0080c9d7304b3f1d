package counterbench.shell.acts;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.SiteChoice;
import java.util.List;
import java.util.function.Supplier;

/** Records one act at the site at which it was typed. */
public abstract class ActCommand extends RecordingCommand {
    /**
     * @param manual says what the command takes besides when, who and at which site
     */
    protected ActCommand(Manual manual, Supplier<Store> store, SiteChoice sites) {
        super(manual, store, sites);
    }

    /** One of which it may not be kept when it happened. */
    protected ActCommand(Manual manual, Supplier<Store> store, SiteChoice sites, When when) {
        super(manual, store, sites, when);
    }

    /** The act that the line asks for. */
    protected abstract Act act(Invocation in, Site site, Stamp stamp);

    @Override
    protected final List<AtSite> acts(Invocation in, Site site, Stamp stamp) {
        return List.of(new AtSite(site, act(in, site, stamp)));
    }
}
