package counterbench.shell.rack;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.rack.TakeOffShipment;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import counterbench.shell.acts.LiveNames;
import java.util.function.Supplier;

/** Take cores off a shipment that has not left. */
public final class ShipmentTakeOffCommand extends ActCommand {
    private static final Argument<String> CORES =
            Argument.of("CORE", RackOptions.CORE, "tags of cores on it").asRepeatable();

    public ShipmentTakeOffCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("shipment take-off", Group.CORE_RACK, "Take cores off a shipment again")
                .takes(
                        RackOptions.SHIPMENT.completedBy(names.shipments()),
                        CORES.completedBy(names.cores()))
                .example("shipment take-off SH-N14 NC-0073");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new TakeOffShipment(in.get(RackOptions.SHIPMENT), in.all(CORES), stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return String.join(", ", in.all(CORES))
                + " taken off shipment "
                + in.get(RackOptions.SHIPMENT);
    }
}
