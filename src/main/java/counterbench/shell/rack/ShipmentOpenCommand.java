package counterbench.shell.rack;

import counterbench.acts.Act;
import counterbench.acts.Shipment;
import counterbench.acts.Stamp;
import counterbench.acts.rack.OpenShipment;
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
import java.util.function.Supplier;

/** Open a shipment. */
public final class ShipmentOpenCommand extends ActCommand {
    private static final Option<String> CARRIER =
            Option.of("carrier", "TEXT", Readings.TEXT, "who carries it").asRequired();
    private static final Option<String> TRACKING =
            Option.of("tracking", "NUMBER", Readings.TEXT, "the carrier's number for it")
                    .asRequired();
    private static final Option<Weight> WEIGHT =
            Option.of("weight", "WEIGHT", Readings.WEIGHT, "what it weighs, in kg or lb");

    public ShipmentOpenCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("shipment open", Group.CORE_RACK, "Open a shipment of cores")
                        .takes(RackOptions.SHIPMENT, CARRIER, TRACKING, WEIGHT)
                        .example(
                                "shipment open SH-N14 --carrier \"Two Rivers Freight\" --tracking"
                                        + " N500114203")
                        .note(
                                "Cores are put onto it with shipment add, and it leaves with ship. What it"
                                        + " weighs can be said then; else the weights of its packed"
                                        + " cores are summed."),
                store,
                sites,
                When.NOT_KEPT);
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new OpenShipment(
                new Shipment(
                        in.get(RackOptions.SHIPMENT),
                        in.get(CARRIER),
                        in.get(TRACKING),
                        in.find(WEIGHT).orElse(null),
                        stamp.by()));
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return "shipment " + in.get(RackOptions.SHIPMENT) + " is open";
    }
}
