package counterbench.shell.people;

import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.people.store.ChangePeople;
import counterbench.people.store.ChangeSite;
import counterbench.shared.Site;
import counterbench.shared.units.Weight;
import counterbench.shell.Argument;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Options;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Sets the most that the site lets a shipment weigh. */
public final class ShipmentLimitCommand extends BaseCommand {
    private static final Argument<Weight> WEIGHT =
            Argument.of("WEIGHT", Readings.WEIGHT, "the most, such as \"30 kg\" or \"66 lb\"")
                    .asOptional();
    private static final Option<Boolean> NONE =
            Option.flag("none", "let shipments of any weight go");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public ShipmentLimitCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of(
                                "shipment limit",
                                Group.LEAD,
                                "Set the most that the site lets a shipment weigh")
                        .takes(WEIGHT, NONE, Options.SITE)
                        .example("shipment limit \"30 kg\"")
                        .example("shipment limit --none")
                        .note(
                                "ship refuses a shipment that weighs more; shipments that have left"
                                        + " stay as they are."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        if (in.find(WEIGHT).isPresent() == in.has(NONE)) {
            throw in.wrong("say either a weight or --none");
        }
        Site site = sites.of(in);
        @Nullable Weight limit = in.find(WEIGHT).orElse(null);
        var by = new ChangePeople.By(in.person(), site, in.now(), in.line());
        Entry entry = new ChangeSite(store.get()).limit(by, limit);
        in.print(
                (limit == null
                                ? "shipments of any weight may go: "
                                : "a shipment may weigh up to " + limit + ": ")
                        + Told.entry(site, entry));
        return Status.DONE;
    }
}
