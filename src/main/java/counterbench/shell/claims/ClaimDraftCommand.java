package counterbench.shell.claims;

import counterbench.acts.JobState;
import counterbench.acts.Named;
import counterbench.acts.desk.ClaimCase;
import counterbench.acts.desk.ClaimDraft;
import counterbench.acts.store.ReadDrafts;
import counterbench.acts.store.ReadSituation;
import counterbench.campaign.store.PackBook;
import counterbench.claims.Money;
import counterbench.claims.draft.Draft;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Options;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.acts.LiveNames;
import counterbench.shell.campaign.KnownCampaign;
import counterbench.shell.month.ReadJobs;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;

/** Drafts a claim for every job that is done and not claimed. */
public final class ClaimDraftCommand extends BaseCommand {
    private static final Option<String> CAMPAIGN =
            Option.of("campaign", "CAMPAIGN", Readings.TEXT, "only jobs of this campaign");
    private static final Option<String> JOB =
            Option.of("job", "JOB", Readings.TEXT, "only this job, claimed already or not");
    private static final Option<Boolean> LINES =
            Option.flag("lines", "of what each draft is made: labour, parts, allowance, charge");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public ClaimDraftCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of(
                                "claim draft",
                                Group.WARRANTY_DESK,
                                "Draft a claim for every job that is done and not claimed")
                        .takes(
                                DeskOptions.MONTH,
                                CAMPAIGN.completedBy(new LiveNames(store).campaigns()),
                                JOB.completedBy(new LiveNames(store).jobs()),
                                LINES,
                                DeskOptions.AS_OF,
                                Options.SITE.completedBy(new LiveNames(store).sites()))
                        .printsRows()
                        .example("claim draft --month 2026-03")
                        .example("claim draft --month 2026-03 --format csv")
                        .example("claim draft --job N-167 --lines")
                        .note(
                                "Labour is the hours of the operation for the job's outcome at the"
                                        + " rate of the day of completion. Parts are the kit's cost,"
                                        + " once and whole, less what was put back, and loose parts"
                                        + " at what their receipts cost, first in, first out, with"
                                        + " the campaign's allowance. Each line is rounded half-even"
                                        + " to the cent.")
                        .note(
                                "A draft is worked out anew each time and kept nowhere; claim submit"
                                        + " records it."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        Instant asOf = DeskOptions.asOf(in, site);
        in.find(JOB).ifPresent(job -> checkDone(site, asOf, job));
        List<ClaimDraft> drafts =
                new ReadDrafts(store.get()).run(site, asOf, wanted(in), ReadJobs.shown(in, site));
        if (in.has(LINES)) {
            DraftLines.print(in, drafts);
        } else {
            print(in, drafts);
        }
        tell(in, site, drafts, site.dayOf(asOf));
        return Status.DONE;
    }

    /** Refuses a job that is not there, with the near name, or that cannot be claimed. */
    private void checkDone(Site site, Instant asOf, String job) {
        JobState state = new ReadSituation(store.get()).run(site, asOf, Named.job(job)).job(job);
        ClaimCase.demand(state, "draft for job \"" + job + "\"");
    }

    private static void print(Invocation in, List<ClaimDraft> drafts) {
        try (Rows rows =
                in.rows(
                        Column.text("job"),
                        Column.text("campaign").asDetail(),
                        Column.text("work_order").asDetail(),
                        Column.text("completed_on"),
                        Column.text("operation").asDetail(),
                        Column.number("labour_hours").asDetail(),
                        Column.number("labour_amount").asSpare(),
                        Column.number("parts_amount").asSpare(),
                        Column.number("core_charge").asSpare(),
                        Column.number("total"),
                        Column.text("submit_by"),
                        Column.text("held_back"))) {
            drafts.forEach(draft -> add(rows, draft));
        }
    }

    private Predicate<ClaimCase> wanted(Invocation in) {
        Optional<YearMonth> month = in.find(DeskOptions.MONTH);
        Optional<String> campaign =
                in.find(CAMPAIGN)
                        .map(named -> KnownCampaign.of(named, new PackBook(store.get()).all()));
        Optional<String> job = in.find(JOB);
        return found ->
                job.map(found.job().name()::equals).orElse(found.isUnclaimed())
                        && (month.isEmpty() || month.get().equals(found.month()))
                        && (campaign.isEmpty()
                                || campaign.get().equals(found.job().job().campaign()));
    }

    private static void add(Rows rows, ClaimDraft drafted) {
        Draft draft = drafted.draft();
        rows.add(
                draft.job(),
                draft.campaign(),
                draft.workOrder(),
                draft.completedOn(),
                draft.operation(),
                draft.hours().stripTrailingZeros().toPlainString(),
                Money.text(draft.labour()),
                Money.text(draft.parts()),
                Money.text(draft.coreCharge()),
                Money.text(draft.total()),
                draft.submitBy(),
                drafted.isReady() ? null : String.join("; ", drafted.held()));
    }

    private static void tell(Invocation in, Site site, List<ClaimDraft> drafts, LocalDate today) {
        List<ClaimDraft> ready = drafts.stream().filter(ClaimDraft::isReady).toList();
        in.tell(
                "%s ready to submit, for %s %s in all; %d held back"
                        .formatted(
                                drafts.size() == 1
                                        ? "1 draft, " + ready.size()
                                        : drafts.size() + " drafts, " + ready.size() + " of them",
                                Money.text(
                                        Money.sum(
                                                ready.stream()
                                                        .map(d -> d.draft().total())
                                                        .toList())),
                                site.currency().getCurrencyCode(),
                                drafts.size() - ready.size()));
        DueSoon.words(drafts, today).forEach(in::tell);
    }
}
