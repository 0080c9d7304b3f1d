package counterbench.shell.rack;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.rack.Acknowledge;
import counterbench.acts.store.ReadShipment;
import counterbench.acts.store.RecordAct;
import counterbench.cores.CoreEvent;
import counterbench.db.Store;
import counterbench.facts.FactRow;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import counterbench.shell.acts.LiveNames;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Write down what the return centre says of a shipment. */
public final class AcknowledgeCommand extends ActCommand {
    /** What the return centre can say. */
    public enum Answer {
        RECEIVED,
        ACCEPTED,
        REJECTED;

        CoreEvent.Kind event() {
            return CoreEvent.Kind.valueOf(name());
        }
    }

    private static final Argument<Answer> ANSWER =
            Argument.of("ANSWER", Readings.oneOf(Answer.class), "received, accepted or rejected");
    private static final Argument<String> CORES =
            Argument.of(
                            "CORE",
                            RackOptions.CORE,
                            "tags as they name them; all that are left unless said")
                    .asOptional()
                    .asRepeatable();
    private static final Option<String> SERIAL =
            Option.of("serial", "SERIAL", Readings.TEXT, "a serial as they name it").asRepeatable();
    private static final Option<String> REASON =
            Option.of("reason", "TEXT", Readings.TEXT, "why they rejected it");
    private static final Option<Boolean> AS_WRITTEN =
            Option.flag("as-written", "record what they wrote though it does not fit");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public AcknowledgeCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
        this.store = store;
        this.sites = sites;
    }

    private static Manual manual(LiveNames names) {
        return Manual.of(
                        "acknowledge",
                        Group.CORE_RACK,
                        "Write down what the return centre says of a shipment")
                .takes(
                        RackOptions.SHIPMENT.completedBy(names.shipments()),
                        ANSWER,
                        CORES.completedBy(names.cores()),
                        SERIAL,
                        REASON,
                        AS_WRITTEN)
                .example("acknowledge SH-N13 accepted")
                .example("acknowledge SH-N13 rejected NC-0071 --reason \"fuel in the housing\"")
                .example("acknowledge SH-N07 received NC-9038 --serial 7P299116 --as-written")
                .note(
                        "Without cores, it is said of every core on the shipment of which they have"
                                + " not said so yet. One core and one --serial are one unit. Their"
                                + " whole sheet can be imported (acknowledgements).")
                .note(
                        "Names that are not on the shipment are refused with what they may mean, so"
                                + " that nothing is guessed.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new Acknowledge(
                in.get(RackOptions.SHIPMENT),
                in.get(ANSWER).event(),
                in.all(CORES),
                in.all(SERIAL),
                in.find(REASON).orElse(null),
                in.has(AS_WRITTEN),
                stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        String shipment = in.get(RackOptions.SHIPMENT);
        Site site = sites.of(in);
        ReadShipment reading = new ReadShipment(store.get());
        store.get()
                .again(() -> reading.differences(shipment, site, recorded.after().now()))
                .forEach(difference -> in.tell(difference.words()));
        return recorded.facts().stream()
                        .map(AcknowledgeCommand::named)
                        .collect(Collectors.joining(", "))
                + " of shipment "
                + shipment
                + " "
                + in.get(ANSWER).name().toLowerCase(Locale.ROOT);
    }

    private static String named(FactRow row) {
        return Optional.ofNullable(row.text("core"))
                .orElseGet(() -> "serial " + Objects.requireNonNull(row.text("serial")));
    }
}
