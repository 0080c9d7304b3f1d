package counterbench.shell.counter;

import counterbench.db.Store;
import counterbench.month.store.ExportCountSheet;
import counterbench.shared.Site;
import counterbench.sheets.report.ReportLayouts;
import counterbench.sheets.report.WorkbookSink;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Options;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.WorkbookFile;
import counterbench.shell.acts.LiveNames;
import java.nio.file.Path;
import java.util.function.Supplier;

/** Writes the sheet to count the shelf with. */
public final class ExportCountSheetCommand extends BaseCommand {
    private static final String LAYOUT = "count-sheet";

    private final Supplier<Store> store;
    private final SiteChoice sites;
    private final WorkbookSink sink;

    public ExportCountSheetCommand(Supplier<Store> store, SiteChoice sites, WorkbookSink sink) {
        super(
                Manual.of(
                                "export count-sheet",
                                Group.PARTS_COUNTER,
                                "Write a sheet to count the shelf with")
                        .takes(
                                WorkbookFile.TO,
                                WorkbookFile.REPLACE,
                                Options.SITE.completedBy(new LiveNames(store).sites()))
                        .example("export count-sheet")
                        .example("export count-sheet --to shelf.xlsx --replace")
                        .note(
                                "It lists the loose parts and the kits, with room for what is"
                                        + " counted and without what the book says. Record what was"
                                        + " counted with count, or import it as a sheet of counts.")
                        .note(
                                "Headings, order and columns are changed in a copy of"
                                        + " reports/count-sheet.yaml in the home folder."));
        this.store = store;
        this.sites = sites;
        this.sink = sink;
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        String day = site.dayOf(in.now()).toString();
        Path file = WorkbookFile.of(in, "count-sheet-" + site.site() + "-" + day + ".xlsx");
        var request =
                new ExportCountSheet.Request(
                        site,
                        new ReportLayouts(in.home().location()).layout(LAYOUT),
                        in.now(),
                        file);
        int lines =
                WorkbookFile.write(
                        in,
                        file,
                        () -> new ExportCountSheet(store.get(), sink).run(request, in.progress()));
        in.tell(lines + " lines to count at " + site.site());
        return Status.DONE;
    }
}
