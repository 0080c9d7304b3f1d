package counterbench.shell.rack;

import counterbench.acts.rack.Manifest;
import counterbench.acts.rack.ShipmentPage;
import counterbench.acts.store.ReadShipment;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.sheets.report.Report;
import counterbench.sheets.report.ReportLayout;
import counterbench.sheets.report.ReportLayouts;
import counterbench.sheets.report.WorkbookSink;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Options;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.WorkbookFile;
import counterbench.shell.acts.LiveNames;
import counterbench.shell.month.ReadJobs;
import java.nio.file.Path;
import java.time.Instant;
import java.util.function.Supplier;

/** Writes the manifest of a shipment as a workbook. */
public final class ExportManifestCommand extends BaseCommand {
    private static final String LAYOUT = "manifest";
    private static final Option<String> SHIPMENT =
            Option.of("shipment", "SHIPMENT", RackOptions.SHIPMENT_NAME, "which shipment")
                    .asRequired();

    private final Supplier<Store> store;
    private final SiteChoice sites;
    private final WorkbookSink sink;

    public ExportManifestCommand(Supplier<Store> store, SiteChoice sites, WorkbookSink sink) {
        super(manual(new LiveNames(store)));
        this.store = store;
        this.sites = sites;
        this.sink = sink;
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("export manifest", Group.CORE_RACK, "Write the manifest of a shipment")
                .takes(
                        SHIPMENT.completedBy(names.shipments()),
                        WorkbookFile.TO,
                        WorkbookFile.REPLACE,
                        Options.SITE.completedBy(names.sites()))
                .example("export manifest --shipment SH-N13")
                .example("export manifest --shipment SH-N13 --to manifest.xlsx --replace")
                .note(
                        "Headings, order and columns are changed in a copy of reports/manifest.yaml"
                                + " in the home folder.")
                .note(
                        "Rules for fuel-wetted parts and the shipper's declaration are left to the"
                                + " shipper; the manifest says which rules to look at first.");
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        String shipment = in.get(SHIPMENT);
        Instant now = in.now();
        ShipmentPage page =
                new ReadShipment(store.get()).run(shipment, site, now, ReadJobs.shown(in, site));
        Path file = WorkbookFile.of(in, usualName(page));
        ReportLayout layout = new ReportLayouts(in.home().location()).layout(LAYOUT);
        Manifest manifest = new Manifest(page);
        Report report =
                new Report(
                        layout,
                        site.name() + ", shipment " + shipment,
                        site.zone(),
                        site.currency(),
                        now,
                        manifest.rows(),
                        manifest.notes());
        WorkbookFile.write(
                in,
                file,
                () -> {
                    sink.write(report, file);
                    return file;
                });
        in.tell(
                "the manifest of shipment "
                        + shipment
                        + "; the declaration is left to the shipper");
        return Status.DONE;
    }

    /** A shipment's name may hold what no file's name may. */
    private static String usualName(ShipmentPage page) {
        String plain = page.state().name().replaceAll("[^A-Za-z0-9._-]", "_");
        return "manifest-" + page.site().site() + "-" + plain + ".xlsx";
    }
}
