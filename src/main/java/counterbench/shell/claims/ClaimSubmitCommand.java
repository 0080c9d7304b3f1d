package counterbench.shell.claims;

import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.acts.desk.ClaimDraft;
import counterbench.acts.desk.SubmitClaims;
import counterbench.acts.store.ReadDrafts;
import counterbench.acts.store.ReadSituation;
import counterbench.acts.store.RecordAct;
import counterbench.claims.Money;
import counterbench.db.Store;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Options;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.acts.ActTold;
import counterbench.shell.acts.LiveNames;
import counterbench.shell.month.ReadJobs;
import counterbench.stock.Issue;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Submits claims, where the review has nothing against it. */
public final class ClaimSubmitCommand extends BaseCommand {
    private static final Argument<String> JOBS =
            Argument.of("JOB", Readings.TEXT, "the jobs to claim; with --month, all that are ready")
                    .asRepeatable()
                    .asOptional();
    private static final Option<String> CLAIM =
            Option.of("claim", "NUMBER", Readings.TEXT, "the claim's number; the next unless said");
    private static final Option<String> OVERRIDE =
            Option.of(
                    "override",
                    "REASON",
                    Readings.TEXT,
                    "submit against the review, as the lead, and why");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public ClaimSubmitCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)));
        this.store = store;
        this.sites = sites;
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("claim submit", Group.WARRANTY_DESK, "Submit the claims of jobs")
                .takes(
                        JOBS.completedBy(names.jobs()),
                        DeskOptions.MONTH,
                        CLAIM,
                        DeskOptions.ON,
                        OVERRIDE,
                        Options.SITE.completedBy(names.sites()))
                .example("claim submit N-165 N-168")
                .example("claim submit --month 2026-03")
                .example("claim submit N-165 --override \"agreed by letter of 9 April\"")
                .note(
                        "The review is asked first: no claim for a job with an open stop, none"
                                + " twice, none whose core does not meet what the claim needs. The"
                                + " lead may override that with a reason, which is recorded. Of jobs"
                                + " that are named, all are submitted or none; with --month, those"
                                + " that are ready, and the others are told.");
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        Person person = in.person();
        LocalDate on = DeskOptions.on(in, site.dayOf(in.now()), "submit");
        if (in.has(OVERRIDE)) {
            person.mustActAs(Role.LEAD, "claim submit --override");
        }
        List<String> jobs = jobs(in, site);
        if (in.has(CLAIM) && jobs.size() != 1) {
            throw in.wrong("--claim is for one job; leave it out to number several");
        }
        SubmitClaims act =
                new SubmitClaims(
                        jobs,
                        looseParts(in, site, jobs),
                        in.find(CLAIM).orElse(null),
                        on,
                        in.find(OVERRIDE).orElse(null),
                        new Stamp(in.now(), person.name()));
        var by = new RecordAct.By(person, site, in.now(), in.commandName(), in.line());
        told(in, site, new RecordAct(store.get()).run(by, act));
        return Status.DONE;
    }

    private List<String> jobs(Invocation in, Site site) {
        if (in.has(JOBS) == in.has(DeskOptions.MONTH)) {
            throw in.wrong("which jobs? claim submit JOB ..., or claim submit --month MONTH");
        }
        if (in.has(JOBS)) {
            return in.all(JOBS).stream().distinct().toList();
        }
        YearMonth month = in.get(DeskOptions.MONTH);
        List<ClaimDraft> drafts =
                new ReadDrafts(store.get())
                        .run(
                                site,
                                in.now(),
                                found -> found.isUnclaimed() && month.equals(found.month()),
                                ReadJobs.shown(in, site));
        if (drafts.isEmpty()) {
            throw new Refused(
                    "claims of " + month,
                    "no job that was done in that month is left to claim",
                    "claim list shows what was claimed");
        }
        drafts.stream()
                .filter(d -> !d.isReady())
                .forEach(
                        d ->
                                in.tell(
                                        "job "
                                                + d.draft().job()
                                                + " held back: "
                                                + String.join("; ", d.held())));
        List<String> ready =
                drafts.stream().filter(ClaimDraft::isReady).map(d -> d.draft().job()).toList();
        if (ready.isEmpty()) {
            throw new Refused(
                    "claims of " + month,
                    "no job of that month is ready to be claimed",
                    "see what holds them back: claim draft --month " + month);
        }
        return ready;
    }

    /** Loose parts that went to the jobs, whose costs the store's whole story tells. */
    private Set<String> looseParts(Invocation in, Site site, List<String> jobs) {
        Situation situation =
                new ReadSituation(store.get()).run(site, in.now(), Named.NOTHING.withJobs(jobs));
        return jobs.stream()
                .flatMap(job -> situation.findJob(job).stream())
                .flatMap(job -> job.file().issues().stream())
                .map(Issue::part)
                .filter(Objects::nonNull)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static void told(Invocation in, Site site, RecordAct.Recorded recorded) {
        for (FactRow row : recorded.facts()) {
            if (row.kind() == FactKind.CLAIMS) {
                in.print(
                        "claim "
                                + row.text("claim")
                                + " for job "
                                + row.text("job")
                                + ": "
                                + sum(row, site));
            } else {
                in.print("overridden for " + row.text("subject") + ": " + row.text("findings"));
            }
        }
        in.print("submitted: " + ActTold.where(site, recorded.entry()));
        ActTold.besides(recorded).forEach(in::tell);
    }

    private static String sum(FactRow row, Site site) {
        BigDecimal total =
                Money.sum(
                        List.of(
                                Objects.requireNonNull(row.decimal("labour_amount")),
                                Objects.requireNonNull(row.decimal("parts_amount")),
                                Objects.requireNonNull(row.decimal("core_charge"))));
        return Money.text(total) + " " + site.currency().getCurrencyCode();
    }
}
