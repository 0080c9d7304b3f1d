package counterbench.shell.bench;

import counterbench.acts.JobState;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.bench.FitState;
import counterbench.acts.bench.Progress;
import counterbench.acts.store.ReadSituation;
import counterbench.acts.store.SiteJobs;
import counterbench.campaign.store.PackBook;
import counterbench.db.Store;
import counterbench.facts.FactRow;
import counterbench.people.store.StaffBook;
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
import counterbench.shell.print.Column;
import counterbench.shell.print.Format;
import counterbench.shell.print.Rows;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Lists jobs: the open ones with their next step and what is still to fit, or all. */
public final class JobListCommand extends BaseCommand {
    private static final Option<Boolean> ALL = Option.flag("all", "those that have ended, too");
    private static final Option<String> CAMPAIGN =
            Option.of("campaign", "CAMPAIGN", Readings.TEXT, "of one campaign");
    private static final Option<String> TECHNICIAN =
            Option.of("technician", "NAME", Readings.TEXT, "of one technician");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public JobListCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)));
        this.store = store;
        this.sites = sites;
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("job list", Group.BENCH, "List the open jobs with their next step")
                .takes(
                        ALL,
                        CAMPAIGN.completedBy(names.campaigns()),
                        TECHNICIAN.completedBy(names.people()),
                        Options.SITE.completedBy(names.sites()))
                .printsRows()
                .example("job list")
                .example("job list --all --campaign HB-0417 --format csv");
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        List<FactRow> all = new SiteJobs(store.get(), site).all();
        mustBeKnown(in, all);
        List<FactRow> jobs =
                all.stream()
                        .filter(row -> in.has(ALL) || row.text("outcome") == null)
                        .filter(row -> isSaid(in.find(CAMPAIGN), row.text("campaign")))
                        .filter(row -> isSaid(in.find(TECHNICIAN), row.text("technician")))
                        .toList();
        Set<String> open = new HashSet<>();
        jobs.stream()
                .filter(row -> row.text("outcome") == null)
                .forEach(row -> open.add(name(row)));
        Situation situation =
                new ReadSituation(store.get()).latest(site, in.now(), Named.NOTHING.withJobs(open));
        try (Rows rows = rows(in)) {
            boolean isTable = in.format() == Format.TABLE;
            jobs.forEach(row -> rows.add(cells(site, row, situation.findJob(name(row)), isTable)));
        }
        return Status.DONE;
    }

    /** Nothing is listed of a slip of the pen, which would look as if there were no such job. */
    private void mustBeKnown(Invocation in, List<FactRow> all) {
        in.find(CAMPAIGN)
                .filter(campaign -> !texts(all, "campaign").contains(campaign))
                .ifPresent(campaign -> KnownCampaign.of(campaign, new PackBook(store.get()).all()));
        in.find(TECHNICIAN)
                .filter(name -> !texts(all, "technician").contains(name))
                .ifPresent(name -> new StaffBook(store.get()).person(name));
    }

    private static Set<String> texts(List<FactRow> rows, String column) {
        return rows.stream()
                .flatMap(row -> Stream.ofNullable(row.text(column)))
                .collect(Collectors.toSet());
    }

    private static boolean isSaid(Optional<String> wanted, @Nullable String is) {
        return wanted.isEmpty() || wanted.get().equals(is);
    }

    private static String name(FactRow row) {
        return Objects.requireNonNull(row.text("job"));
    }

    private static Rows rows(Invocation in) {
        return in.rows(
                Column.text("job"),
                Column.text("campaign").asSpare(),
                Column.text("vin"),
                Column.text("opened").asSpare(),
                Column.text("technician").asSpare(),
                Column.text("work_order").asSpare(),
                Column.text("state"),
                Column.text("ended").asSpare(),
                Column.text("next_step"),
                Column.text("to_fit"));
    }

    private static @Nullable Object[] cells(
            Site site, FactRow row, Optional<JobState> state, boolean isTable) {
        Optional<JobState> open = state.filter(s -> s.job().isOpen());
        return new @Nullable Object[] {
            row.text("job"),
            row.text("campaign"),
            row.text("vin"),
            wall(site, row.time("opened_at")),
            row.text("technician"),
            row.text("work_order"),
            Objects.requireNonNullElse(row.text("outcome"), "open"),
            wall(site, row.time("completed_at")),
            open.flatMap(s -> Progress.of(s).next()).map(step -> step.step().id()).orElse(null),
            open.map(job -> toFit(job, isTable)).orElse(null)
        };
    }

    /** In a table, a quantity and its part stay in one line. */
    private static String toFit(JobState job, boolean isTable) {
        return FitState.of(job, Instant.MAX).stream()
                .filter(fit -> fit.missing().isPositive())
                .map(FitState::words)
                .map(words -> isTable ? words.replace(' ', Rows.UNBROKEN) : words)
                .collect(Collectors.joining(", "));
    }

    private static @Nullable String wall(Site site, @Nullable Instant at) {
        return at == null ? null : site.wallTime(at);
    }
}
