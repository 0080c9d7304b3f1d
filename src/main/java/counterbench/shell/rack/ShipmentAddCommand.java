package counterbench.shell.rack;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.rack.AddToShipment;
import counterbench.acts.rack.BoardLine;
import counterbench.acts.store.ProposeCores;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.SiteChoice;
import counterbench.shell.YesNo;
import counterbench.shell.acts.ActCommand;
import counterbench.shell.acts.LiveNames;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Put cores onto a shipment: those that are named, or those that may go. */
public final class ShipmentAddCommand extends ActCommand {
    private static final Argument<String> CORES =
            Argument.of(
                            "CORE",
                            RackOptions.CORE,
                            "tags of cores; without, those that may go are proposed")
                    .asOptional()
                    .asRepeatable();
    private static final Option<Boolean> PROPOSED =
            Option.flag("proposed", "take those proposed without being asked");

    private final Supplier<Store> store;

    public ShipmentAddCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
        this.store = store;
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("shipment add", Group.CORE_RACK, "Put cores onto a shipment")
                .takes(
                        RackOptions.SHIPMENT.completedBy(names.shipments()),
                        CORES.completedBy(names.cores()),
                        PROPOSED)
                .example("shipment add SH-N14 NC-0072 NC-0073")
                .example("shipment add SH-N14")
                .example("shipment add SH-N14 --proposed")
                .note(
                        "Proposed are the packed cores against which no open stop stands, the day"
                                + " to ship by that comes first in front, as many as the site's"
                                + " limit a shipment lets go; of cores in several yards, those that"
                                + " lie with the ones on it, or at home.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        if (!in.all(CORES).isEmpty() && in.has(PROPOSED)) {
            throw in.wrong("either name the cores or take those --proposed");
        }
        List<String> tags = in.all(CORES).isEmpty() ? proposed(in, site) : in.all(CORES);
        return new AddToShipment(in.get(RackOptions.SHIPMENT), tags, stamp);
    }

    private List<String> proposed(Invocation in, Site site) {
        String shipment = in.get(RackOptions.SHIPMENT);
        List<BoardLine> cores =
                new ProposeCores(store.get()).to(shipment, site, in.now(), in.progress()::step);
        String asked = "shipment add " + shipment;
        if (cores.isEmpty()) {
            throw new Refused(
                    asked,
                    "no core may go: none in its yard is packed without an open stop and not on a"
                            + " shipment",
                    "rack shows what each one waits for");
        }
        String names =
                cores.stream().map(ShipmentAddCommand::words).collect(Collectors.joining(", "));
        if (!in.has(PROPOSED)) {
            confirm(in, asked, names);
        }
        return cores.stream().map(BoardLine::core).toList();
    }

    private static String words(BoardLine line) {
        return line.core() + (line.shipBy() == null ? "" : " (by " + line.shipBy() + ")");
    }

    private static void confirm(Invocation in, String asked, String names) {
        if (!in.isScreen()) {
            throw new Refused(
                    asked,
                    "these may go: " + names,
                    "add --proposed to take them, or name the cores");
        }
        if (!YesNo.of(in, "Put on " + names + "?")) {
            throw new Refused(asked, "no core was put on", "name the cores instead");
        }
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return CoresTold.of(recorded) + " on shipment " + in.get(RackOptions.SHIPMENT);
    }
}
