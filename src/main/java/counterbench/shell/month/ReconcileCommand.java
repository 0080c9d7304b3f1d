package counterbench.shell.month;

import counterbench.campaign.store.PackBook;
import counterbench.db.Store;
import counterbench.journal.Seal;
import counterbench.month.MonthAccount;
import counterbench.month.store.MonthFindings;
import counterbench.month.store.ReconcileMonth;
import counterbench.shared.Site;
import counterbench.shared.WrittenTime;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.KnownEntry;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Options;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.acts.LiveNames;
import counterbench.shell.campaign.KnownCampaign;
import java.time.Instant;
import java.time.YearMonth;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Sets what a month's completed jobs used against what they require, and accounts for the goods.
 */
public final class ReconcileCommand extends BaseCommand {
    private static final Option<String> CAMPAIGN =
            Option.of("campaign", "CAMPAIGN", Readings.TEXT, "which campaign").asRequired();
    private static final Option<YearMonth> MONTH =
            Option.of("month", "MONTH", Readings.MONTH, "which month, such as 2026-03")
                    .asRequired();
    private static final Option<WrittenTime> AS_OF =
            Option.of("as-of", "TIME", Readings.TIME, "as of when; now unless said");
    private static final Option<Boolean> STRICT =
            Option.flag("strict", "end with 3 if a job or a count is one to look at");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public ReconcileCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("reconcile", Group.MONTH, "Set what was used against what jobs require")
                        .takes(
                                CAMPAIGN.completedBy(new LiveNames(store).campaigns()),
                                MONTH,
                                AS_OF,
                                KnownEntry.OPTION,
                                STRICT,
                                Options.SITE.completedBy(new LiveNames(store).sites()))
                        .printsRows()
                        .example("reconcile --campaign QM-26-014 --month 2026-03")
                        .example("reconcile --campaign QM-26-014 --month 2026-03 --strict")
                        .note(
                                "Consumption is what the campaign's jobs completed in the month"
                                        + " required and used, with the jobs to look at. Goods are"
                                        + " where the parts came from and went at the whole site:"
                                        + " opening and all movements make the closing.")
                        .note(
                                "What counting found and no paper explains is unexplained. It"
                                        + " shows where to look, and accuses nobody."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        String campaign = KnownCampaign.of(in.get(CAMPAIGN), new PackBook(store.get()).all());
        MonthAccount account = account(in, site);
        new ReconcileRows(site.site(), campaign, in.get(MONTH).toString()).write(in, account);
        return in.has(STRICT) && account.hasSomethingAmiss(campaign) ? Status.FOUND : Status.DONE;
    }

    private MonthAccount account(Invocation in, Site site) {
        Optional<Seal> seal = new MonthFindings(store.get(), site).sealed().of(in.get(MONTH));
        if (seal.isPresent() && !in.has(AS_OF) && !in.has(KnownEntry.OPTION)) {
            return new ReconcileMonth(store.get())
                    .run(
                            site,
                            in.get(MONTH),
                            seal.get().at(),
                            seal.get().entry(),
                            ReadJobs.shown(in, site));
        }
        Instant asOf = in.find(AS_OF).map(time -> time.at(site.zone())).orElse(in.now());
        return new ReconcileMonth(store.get())
                .run(
                        site,
                        in.get(MONTH),
                        asOf,
                        KnownEntry.of(in, store.get(), site),
                        ReadJobs.shown(in, site));
    }
}
