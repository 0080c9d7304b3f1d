package counterbench.shell.rack;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.rack.SendCores;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import counterbench.shell.acts.LiveNames;
import java.util.function.Supplier;

/** Sends cores to the yard of another site. */
public final class CoreSendCommand extends ActCommand {
    private static final Option<String> TO =
            Option.of("to", "SITE", Readings.TEXT, "the site that they go to").asRequired();

    public CoreSendCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("core send", Group.CORE_RACK, "Send cores to another site's yard")
                .takes(RackOptions.TAGS.completedBy(names.cores()), TO.completedBy(names.sites()))
                .example("core send NC-0072 NC-0073 --to SOUTH")
                .example("core send NC-0072 --to NORTH --site NORTH")
                .note(
                        "A core's book stays with the site that removed it: its job, charge, claim"
                                + " and day to ship by, which does not wait for it. In whatever yard"
                                + " it lies, it is worked on, and sent on, with --site of that"
                                + " site.")
                .note(
                        "Whether fuel-wetted units may travel, and how, is in the law's and the"
                                + " carrier's rules, between two yards as well.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new SendCores(in.all(RackOptions.TAGS), in.get(TO), stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return CoresTold.of(recorded) + " sent to site " + in.get(TO);
    }
}
