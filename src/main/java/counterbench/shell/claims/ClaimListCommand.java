package counterbench.shell.claims;

import counterbench.acts.Named;
import counterbench.acts.desk.ClaimLine;
import counterbench.acts.store.ReadClaims;
import counterbench.acts.store.ReadSituation;
import counterbench.claims.Claim;
import counterbench.claims.Money;
import counterbench.claims.Standing;
import counterbench.db.Store;
import counterbench.job.Job;
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
import counterbench.shell.month.ReadJobs;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Lists claims and how they stand. */
public final class ClaimListCommand extends BaseCommand {
    private static final Option<YearMonth> MONTH =
            Option.of("month", "MONTH", Readings.MONTH, "only those submitted in this month");
    private static final Option<Standing.State> STATE =
            Option.of("state", "STATE", Readings.oneOf(Standing.State.class), "how they stand");
    private static final Option<String> JOB =
            Option.of("job", "JOB", Readings.TEXT, "only those for this job");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public ClaimListCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("claim list", Group.WARRANTY_DESK, "List claims and how they stand")
                        .takes(
                                MONTH,
                                STATE,
                                DeskOptions.AS_OF,
                                JOB.completedBy(new LiveNames(store).jobs()),
                                Options.SITE.completedBy(new LiveNames(store).sites()))
                        .printsRows()
                        .example("claim list --month 2026-03")
                        .example("claim list --state submitted --format csv")
                        .note("Core credits clear core charges and are no payment of a claim."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        in.find(JOB)
                .ifPresent(
                        job ->
                                new ReadSituation(store.get())
                                        .run(site, in.now(), Named.job(job))
                                        .job(job));
        List<ClaimLine> claims =
                new ReadClaims(store.get())
                        .list(
                                site,
                                DeskOptions.asOf(in, site),
                                wanted(in),
                                ReadJobs.shown(in, site));
        try (Rows rows =
                in.rows(
                        Column.text("claim"),
                        Column.text("job"),
                        Column.text("work_order").asDetail(),
                        Column.text("vin").asDetail(),
                        Column.text("submitted_on"),
                        Column.number("labour_amount").asSpare(),
                        Column.number("parts_amount").asSpare(),
                        Column.number("core_charge").asSpare(),
                        Column.number("total"),
                        Column.number("credited"),
                        Column.number("open"),
                        Column.text("state"))) {
            claims.forEach(claim -> add(rows, claim));
        }
        return Status.DONE;
    }

    private static Predicate<ClaimLine> wanted(Invocation in) {
        Optional<YearMonth> month = in.find(MONTH);
        Optional<Standing.State> state = in.find(STATE);
        Optional<String> job = in.find(JOB);
        return line ->
                (month.isEmpty() || month.get().equals(YearMonth.from(line.claim().submittedOn())))
                        && (state.isEmpty() || state.get() == line.standing().state())
                        && (job.isEmpty() || job.get().equals(line.claim().job()));
    }

    private static void add(Rows rows, ClaimLine line) {
        Claim claim = line.claim();
        @Nullable Job job = line.job();
        rows.add(
                claim.claim(),
                claim.job(),
                job == null ? null : job.workOrder(),
                job == null ? null : job.vin(),
                claim.submittedOn(),
                Optional.ofNullable(claim.labourAmount()).map(Money::text).orElse(null),
                Optional.ofNullable(claim.partsAmount()).map(Money::text).orElse(null),
                Optional.ofNullable(claim.coreCharge()).map(Money::text).orElse(null),
                line.standing().total().map(Money::text).orElse(null),
                line.standing().credited().map(Money::text).orElse(null),
                line.standing().open().map(Money::text).orElse(null),
                line.standing().state().words());
    }
}
