package counterbench.shell.campaign;

import counterbench.campaign.Packs;
import counterbench.campaign.store.PackBook;
import counterbench.db.Store;
import counterbench.month.Quarter;
import counterbench.month.store.ExportCampaign;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.sheets.report.ReportLayouts;
import counterbench.sheets.report.WorkbookSink;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Options;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.Unreadable;
import counterbench.shell.WorkbookFile;
import counterbench.shell.acts.LiveNames;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.function.Supplier;

/** Writes the campaign workbook of a quarter. */
public final class ExportCampaignCommand extends BaseCommand {
    private static final Option<Quarter> QUARTER =
            Option.of(
                            "quarter",
                            "QUARTER",
                            ExportCampaignCommand::quarter,
                            "which quarter, such as 2026-Q1")
                    .asRequired();
    private static final Option<String> CAMPAIGN =
            Option.of("campaign", "CAMPAIGN", Readings.TEXT, "which campaign; all unless said");

    private final Supplier<Store> store;
    private final SiteChoice sites;
    private final WorkbookSink sink;

    public ExportCampaignCommand(Supplier<Store> store, SiteChoice sites, WorkbookSink sink) {
        super(
                Manual.of(
                                "export campaign",
                                Group.CAMPAIGNS,
                                "Write the campaign workbook of a quarter")
                        .takes(
                                QUARTER,
                                CAMPAIGN.completedBy(new LiveNames(store).campaigns()),
                                WorkbookFile.TO,
                                WorkbookFile.REPLACE,
                                Options.SITE)
                        .example("export campaign --quarter 2026-Q1")
                        .example(
                                "export campaign --quarter 2026-Q1 --campaign HB-0417 --to q1.xlsx")
                        .note(
                                "Figures are cumulative and over all sites. What of the rules for"
                                        + " quarterly reports is from memory, the workbook says so;"
                                        + " look it up before you rely on it."));
        this.store = store;
        this.sites = sites;
        this.sink = sink;
    }

    private static Quarter quarter(String text) {
        return Quarter.of(text)
                .orElseThrow(() -> new Unreadable("is not a quarter; write it as 2026-Q1"));
    }

    private Collection<String> campaigns(Invocation in) {
        Packs packs = new PackBook(store.get()).all();
        return in.find(CAMPAIGN)
                .<Collection<String>>map(c -> List.of(KnownCampaign.of(c, packs)))
                .orElseGet(packs::campaigns);
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.named(in).get(0);
        Quarter quarter = in.get(QUARTER);
        if (in.now().isBefore(site.startOf(quarter.firstDay()))) {
            throw new Refused(
                    "quarter \"" + quarter + "\"",
                    "it has not begun",
                    "say a quarter up to " + Quarter.of(site.dayOf(in.now())));
        }
        Path file = WorkbookFile.of(in, "campaign-" + quarter + ".xlsx");
        var request =
                new ExportCampaign.Request(
                        quarter,
                        campaigns(in),
                        site,
                        new ReportLayouts(in.home().location()).layout("campaign"),
                        in.now(),
                        file);
        WorkbookFile.write(
                in,
                file,
                () -> {
                    new ExportCampaign(store.get(), sink).run(request);
                    return file;
                });
        if (in.now().isBefore(site.endOf(quarter.lastDay()))) {
            in.tell("the quarter is not over yet; its last facts are still to come");
        }
        return Status.DONE;
    }
}
