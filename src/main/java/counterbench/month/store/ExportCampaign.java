package counterbench.month.store;

import counterbench.campaign.Packs;
import counterbench.campaign.store.PackBook;
import counterbench.db.Store;
import counterbench.journal.store.EntryReader;
import counterbench.month.Quarter;
import counterbench.month.sheet.CampaignBook;
import counterbench.shared.Site;
import counterbench.sheets.report.Report;
import counterbench.sheets.report.ReportLayout;
import counterbench.sheets.report.WorkbookSink;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Collection;

/** Writes a quarter's campaign workbook, over all sites of the store. */
public final class ExportCampaign {
    private final Store store;
    private final WorkbookSink sink;

    public ExportCampaign(Store store, WorkbookSink sink) {
        this.store = store;
        this.sink = sink;
    }

    /**
     * What is asked for.
     *
     * @param site whose time zone and journal the notes name
     */
    public record Request(
            Quarter quarter,
            Collection<String> campaigns,
            Site site,
            ReportLayout layout,
            Instant now,
            Path file) {}

    /** Writes the workbook. */
    public void run(Request request) {
        Packs packs = new PackBook(store).all();
        ReadVehicles vehicles = new ReadVehicles(store);
        CampaignBook book =
                new CampaignBook(
                        request.quarter(),
                        packs,
                        request.campaigns().stream().map(vehicles::of).toList());
        Site site = request.site();
        String known =
                store.read(sql -> EntryReader.newest(sql, site.no(), 1)).stream()
                        .findFirst()
                        .map(
                                e ->
                                        "journal entry "
                                                + e.number()
                                                + " of site "
                                                + site.site()
                                                + ", hash "
                                                + e.hash())
                        .orElse("the journal of site " + site.site() + " has no entry yet");
        sink.write(
                new Report(
                        request.layout(),
                        "Campaigns, " + request.quarter(),
                        site.zone(),
                        site.currency(),
                        request.now(),
                        book.rows(),
                        book.notes(site.wallTime(request.now()), known)),
                request.file());
    }
}
