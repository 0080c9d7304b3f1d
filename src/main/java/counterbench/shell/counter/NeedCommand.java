package counterbench.shell.counter;

import counterbench.acts.CampaignNeed;
import counterbench.acts.store.ReadNeed;
import counterbench.campaign.Pack;
import counterbench.campaign.Packs;
import counterbench.campaign.store.PackBook;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Options;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.acts.LiveNames;
import counterbench.shell.campaign.KnownCampaign;
import java.util.function.Supplier;

/** Shows what a campaign still needs, beside what is there and on order. */
public final class NeedCommand extends BaseCommand {
    private static final Argument<String> CAMPAIGN =
            Argument.of("CAMPAIGN", Readings.TEXT, "the campaign");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public NeedCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)));
        this.store = store;
        this.sites = sites;
    }

    private static Manual manual(LiveNames names) {
        return Manual.of(
                        "need",
                        Group.PARTS_COUNTER,
                        "Show what a campaign still needs, what is there and what is on order")
                .takes(
                        CAMPAIGN.completedBy(names.campaigns()),
                        Options.SITE.completedBy(names.sites()))
                .printsRows()
                .example("need HB-0417")
                .note(
                        "Vehicles are those of the campaign's list, at whatever site; all else is"
                                + " the site's own. Vehicles that were completed, found not to need"
                                + " it, or last called unreachable, scrapped or exported are not"
                                + " open.")
                .note(
                        "A delivery whose paper bears an order's number counts against that order;"
                                + " every other fills the oldest open order of its part.");
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        Packs packs = new PackBook(store.get()).all();
        String campaign = KnownCampaign.of(in.get(CAMPAIGN), packs);
        Pack pack = packs.inForce(campaign, site.dayOf(in.now())).orElseThrow();
        in.progress().begin("looking through campaign " + campaign, 0);
        CampaignNeed need = new ReadNeed(store.get(), site, in.now()).of(pack);
        new NeedRows(site.site()).write(in, need);
        return Status.DONE;
    }
}
