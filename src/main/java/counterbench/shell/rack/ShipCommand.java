package counterbench.shell.rack;

import counterbench.acts.Act;
import counterbench.acts.ShipmentState;
import counterbench.acts.Stamp;
import counterbench.acts.rack.Ship;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shared.units.Weight;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import counterbench.shell.acts.LiveNames;
import java.util.function.Supplier;

/** Send a shipment off, unless a stop stands against a core on it. */
public final class ShipCommand extends ActCommand {
    private static final Option<Weight> WEIGHT =
            Option.of(
                    "weight", "WEIGHT", Readings.WEIGHT, "what it weighs as a whole, in kg or lb");
    private static final Option<String> OVERRIDE =
            Option.of(
                    "override", "REASON", Readings.TEXT, "why it may go all the same; for a lead");

    public ShipCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("ship", Group.CORE_RACK, "Send a shipment off")
                .takes(RackOptions.SHIPMENT.completedBy(names.shipments()), WEIGHT, OVERRIDE)
                .example("ship SH-N14 --weight \"16.2 kg\"")
                .example("ship SH-N14 --override \"drained at the maker's bench, sheet attached\"")
                .note(
                        "While an open finding of severity stop stands against a core on it, or it"
                                + " weighs more than the site lets go, it stays. A lead may let it"
                                + " go with a reason, which is recorded.")
                .note(
                        "Fuel-wetted parts: what may travel, and how it is packed and marked, is in"
                                + " the carrier's and the law's rules. They are the shipper's to check,"
                                + " and no answer of this tool is leave to ship.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new Ship(
                in.get(RackOptions.SHIPMENT),
                in.find(WEIGHT).orElse(null),
                in.find(OVERRIDE).orElse(null),
                stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        ShipmentState gone = recorded.after().shipment(in.get(RackOptions.SHIPMENT));
        int cores = gone.cores().size();
        return "shipment "
                + gone.name()
                + " shipped, "
                + (cores == 1 ? "1 core" : cores + " cores")
                + gone.weight().map(weight -> ", " + weight).orElse("")
                + (in.has(OVERRIDE) ? ", by override" : "");
    }
}
