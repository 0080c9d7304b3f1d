package counterbench.shell.rack;

import counterbench.acts.CoreCase;
import counterbench.acts.ShipmentState;
import counterbench.acts.rack.ShipmentPage;
import counterbench.acts.store.ReadShipment;
import counterbench.cores.CoreEvent;
import counterbench.cores.CoreHistory;
import counterbench.cores.CoreStatus;
import counterbench.db.Store;
import counterbench.judgement.Finding;
import counterbench.shared.Minutes;
import counterbench.shared.Site;
import counterbench.shared.units.Weight;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Options;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.acts.LiveNames;
import counterbench.shell.month.ReadJobs;
import counterbench.shell.print.Column;
import counterbench.shell.print.Format;
import counterbench.shell.print.Rows;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Shows a shipment: its cores, its weight, and where the return centre's sheet differs. */
public final class ShipmentShowCommand extends BaseCommand {
    private final Supplier<Store> store;
    private final SiteChoice sites;

    public ShipmentShowCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of(
                                "shipment show",
                                Group.CORE_RACK,
                                "Show a shipment, and where the return centre's sheet differs")
                        .takes(
                                RackOptions.SHIPMENT.completedBy(new LiveNames(store).shipments()),
                                Options.SITE.completedBy(new LiveNames(store).sites()))
                        .printsRows()
                        .example("shipment show SH-N07")
                        .note(
                                "Differences are matched by the same serial, or by one slip of the hand."
                                        + " They are shown and never put right by themselves."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        ShipmentPage page =
                new ReadShipment(store.get())
                        .run(
                                in.get(RackOptions.SHIPMENT),
                                site,
                                in.now(),
                                ReadJobs.shown(in, site));
        boolean isTable = in.format() == Format.TABLE;
        Column drain = isTable ? Column.text("drained") : Column.number("drain_minutes");
        try (Rows rows =
                in.rows(
                        Column.text("core"),
                        Column.text("job"),
                        Column.text("serial").asSpare(),
                        Column.text("state"),
                        drain,
                        Column.number("plugs"),
                        Column.text("packaging").asSpare(),
                        Column.text("weight").asSpare(),
                        Column.text("findings"))) {
            rows.section(
                    title(page),
                    "core",
                    "job",
                    "serial",
                    "state",
                    drain.key(),
                    "plugs",
                    "packaging",
                    "weight",
                    "findings");
            page.state().cores().forEach(core -> add(rows, page, core, isTable));
        }
        told(page).forEach(in::tell);
        return Status.DONE;
    }

    private static String title(ShipmentPage page) {
        ShipmentState state = page.state();
        return "Shipment "
                + state.name()
                + ", "
                + state.shipment().carrier()
                + ", "
                + state.shipment().tracking()
                + page.otherYard().map(yard -> ", in the yard of " + yard).orElse("")
                + (page.sscc() == null ? "" : ", SSCC " + page.sscc())
                + state.shippedAt()
                        .map(at -> ", left at " + page.site().wallTime(at))
                        .orElse(", open");
    }

    private static void add(Rows rows, ShipmentPage page, CoreCase core, boolean isTable) {
        Function<Duration, Object> drained = isTable ? Minutes::text : Minutes::number;
        CoreHistory history = core.core();
        @Nullable CoreEvent packed = history.lastPacked().orElse(null);
        rows.add(
                history.core(),
                core.job().name(),
                history.serial(),
                CoreStatus.of(history, null).state().word(),
                history.drainPeriods().longest().map(drained).orElse(null),
                history.plugs(),
                packed == null ? null : packed.packaging(),
                packed == null ? null : packed.weight(),
                page.open().getOrDefault(history.core(), List.of()).stream()
                        .map(ShipmentShowCommand::words)
                        .collect(Collectors.joining(", ")));
    }

    private static String words(Finding finding) {
        return finding.rule().severity().word() + " " + finding.rule().word();
    }

    private static List<String> told(ShipmentPage page) {
        List<String> told = new ArrayList<>();
        told.add(weight(page));
        page.opened()
                .forEach(
                        o ->
                                told.add(
                                        "let go by "
                                                + o.person()
                                                + " at "
                                                + page.site().wallTime(o.at())
                                                + ": "
                                                + o.reason()
                                                + (o.findings() == null
                                                        ? ""
                                                        : " (" + o.findings() + ")")));
        page.differences().forEach(difference -> told.add(difference.words()));
        return told;
    }

    private static String weight(ShipmentPage page) {
        @Nullable Weight limit = page.site().shipmentLimit();
        int left = page.state().notWeighed();
        return page.state().weight().map(w -> "weighs " + w).orElse("not weighed")
                + (left == 0 || page.state().weight().isEmpty()
                        ? ""
                        : ", without " + left + " that were not weighed")
                + (limit == null ? "" : "; the site lets " + limit + " go");
    }
}
