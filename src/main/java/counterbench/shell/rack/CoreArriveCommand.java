package counterbench.shell.rack;

import counterbench.acts.Stamp;
import counterbench.acts.rack.ArriveCores;
import counterbench.acts.store.ReadIncoming;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.LiveNames;
import counterbench.shell.acts.RecordingCommand;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Takes in cores that were sent to the yard of the site at which it is typed. */
public final class CoreArriveCommand extends RecordingCommand {
    private static final Option<String> OF =
            Option.of("of", "SITE", Readings.TEXT, "whose cores, where two sites have such a tag");
    private static final Option<String> FROM =
            Option.of("from", "SITE", Readings.TEXT, "the site that sent them");

    private final Supplier<Store> store;

    public CoreArriveCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
        this.store = store;
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("core arrive", Group.CORE_RACK, "Take in cores that another yard sent")
                .takes(
                        RackOptions.TAGS.completedBy(names.coresUnderWay()),
                        OF.completedBy(names.sites()),
                        FROM.completedBy(names.sites()))
                .example("core arrive NC-0072 NC-0073 --site SOUTH")
                .example("core arrive NC-0072 --of NORTH --site SOUTH")
                .note(
                        "--site, or the site chosen, is where they arrive. The arrival is recorded in"
                                + " the journal of the site whose cores they are, for each such site"
                                + " in an entry of its own.");
    }

    @Override
    protected List<AtSite> acts(Invocation in, Site site, Stamp stamp) {
        List<String> tags = in.all(RackOptions.TAGS);
        Map<Site, List<String>> byOwner =
                new ReadIncoming(store.get())
                        .of(site, tags, stamp.at(), in.now())
                        .byOwner(tags, in.find(OF).orElse(null), in.find(FROM).orElse(null));
        return byOwner.entrySet().stream()
                .map(e -> new AtSite(e.getKey(), new ArriveCores(e.getValue(), site.site(), stamp)))
                .toList();
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return CoresTold.of(recorded)
                + " of site "
                + recorded.after().site().site()
                + " arrived at site "
                + recorded.facts().get(0).text("other_site");
    }
}
