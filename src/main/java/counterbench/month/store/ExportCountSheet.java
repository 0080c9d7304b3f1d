package counterbench.month.store;

import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.journal.store.EntryReader;
import counterbench.month.sheet.CountSheet;
import counterbench.month.sheet.PartNames;
import counterbench.review.store.SiteScan;
import counterbench.shared.Progress;
import counterbench.shared.Site;
import counterbench.sheets.report.Report;
import counterbench.sheets.report.ReportLayout;
import counterbench.sheets.report.WorkbookSink;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/** Writes the sheet to count a site's shelf with, as known at its journal's newest entry. */
public final class ExportCountSheet {
    private final Store store;
    private final WorkbookSink sink;

    public ExportCountSheet(Store store, WorkbookSink sink) {
        this.store = store;
        this.sink = sink;
    }

    /**
     * What is asked for.
     *
     * @param file the workbook, written over an older one of that name
     */
    public record Request(Site site, ReportLayout layout, Instant now, Path file) {}

    /** Writes the workbook; says how many lines there are to count. */
    public int run(Request request, Progress progress) {
        Site site = request.site();
        Optional<Entry> newest =
                store.read(sql -> EntryReader.newest(sql, site.no(), 1)).stream().findFirst();
        long known = newest.map(Entry::number).orElse(0L);
        try (SiteScan scan = new SiteScan(store, site, request.now(), known)) {
            CountSheet sheet = new CountSheet(names(scan, site, known));
            JobSteps steps = new JobSteps(progress, "gathering what " + site.site() + " holds");
            scan.all(
                    component -> {
                        sheet.add(component);
                        steps.add(component.jobs().size());
                    });
            sheet.addStore(scan.storeOnly(), scan.looseCounts());
            sink.write(
                    new Report(
                            request.layout(),
                            site.name(),
                            site.zone(),
                            site.currency(),
                            request.now(),
                            sheet.rows(),
                            CountSheet.notes(site, newest.orElse(null))),
                    request.file());
            return sheet.lines();
        }
    }

    private PartNames names(SiteScan scan, Site site, long known) {
        return new PartNames(
                scan.terms().packs(),
                store.read(sql -> PartList.names(sql, site, known)),
                scan.terms().partUnits());
    }
}
