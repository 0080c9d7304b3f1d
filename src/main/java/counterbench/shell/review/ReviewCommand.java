package counterbench.shell.review;

import counterbench.campaign.store.PackBook;
import counterbench.db.Store;
import counterbench.judgement.Rule;
import counterbench.judgement.Severity;
import counterbench.month.store.MonthFindings;
import counterbench.review.FindingState;
import counterbench.review.StatedFinding;
import counterbench.review.store.FindingBook;
import counterbench.review.store.JobSubjects;
import counterbench.review.store.SortedFindings;
import counterbench.shared.Progress;
import counterbench.shared.Refused;
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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import java.util.function.Supplier;

/** Judges every job, core, kit and claim, and shows what is not as it should be. */
public final class ReviewCommand extends BaseCommand {
    private static final Option<WrittenTime> AS_OF =
            Option.of("as-of", "TIME", Readings.TIME, "as of when; now unless said");
    private static final Option<String> CAMPAIGN =
            Option.of("campaign", "CAMPAIGN", Readings.TEXT, "only this campaign's findings");
    private static final Option<String> JOB =
            Option.of("job", "JOB", Readings.TEXT, "only this job, its cores and its claims");
    private static final Option<Rule> RULE =
            Option.of("rule", "RULE", Readings.oneOf(Rule.class), "only this rule's findings")
                    .asRepeatable();
    private static final Option<Severity> SEVERITY =
            Option.of("severity", "SEVERITY", Readings.oneOf(Severity.class), "stop, fix or note")
                    .asRepeatable();
    private static final Option<YearMonth> MONTH =
            Option.of("month", "MONTH", Readings.MONTH, "only findings that count in this month");
    private static final Option<FindingState> STATE =
            Option.of("state", "STATE", Readings.oneOf(FindingState.class), "open or settled");
    private static final Option<Boolean> STRICT =
            Option.flag("strict", "end with 3 if an open stop or fix is shown");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public ReviewCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("review", Group.MONTH, "Show what is not as it should be")
                        .takes(AS_OF, KnownEntry.OPTION)
                        .takes(
                                CAMPAIGN.completedBy(new LiveNames(store).campaigns()),
                                JOB.completedBy(new LiveNames(store).jobs()))
                        .takes(RULE, SEVERITY, MONTH, STATE, STRICT)
                        .takes(Options.SITE.completedBy(new LiveNames(store).sites()))
                        .printsRows()
                        .example("review --severity stop --state open")
                        .example("review --month 2026-03 --strict --format csv")
                        .example("review --as-of \"2026-04-10 12:00\" --job J-118")
                        .note(
                                "A finding says what the facts and the terms show. It is never"
                                        + " leave to drive; the maker's own procedure comes first.")
                        .note("Without --site, all sites are reviewed.")
                        .note(
                                "A sealed month is shown as it was judged at its seal; what turns"
                                        + " up about it later counts in the first open month."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        List<Site> reviewed = sites.named(in);
        if (in.has(KnownEntry.OPTION) && reviewed.size() > 1) {
            throw in.wrong("--known needs --site: every site counts its own entries");
        }
        ReviewFilter filter = filter(in, reviewed);
        FindingSummary summary = new FindingSummary();
        try (SortedFindings shown = new SortedFindings()) {
            for (Site site : reviewed) {
                review(
                        in,
                        site,
                        stated -> {
                            if (filter.test(stated)) {
                                summary.add(stated);
                                shown.add(stated);
                            }
                        });
            }
            FindingRows.write(in, shown);
        }
        in.tell(summary.line());
        return in.has(STRICT) && summary.hasWhatMustBeSettled() ? Status.FOUND : Status.DONE;
    }

    private void review(Invocation in, Site site, Consumer<StatedFinding> taker) {
        FindingBook book = new FindingBook(store.get());
        LongConsumer progress = judged(in, "judging jobs of " + site.site());
        if (in.has(AS_OF) || in.has(KnownEntry.OPTION)) {
            Instant asOf = in.find(AS_OF).map(time -> time.at(site.zone())).orElse(in.now());
            long known = KnownEntry.of(in, store.get(), site);
            book.eachAsOf(site, asOf, known, progress, taker);
        } else if (in.has(MONTH)) {
            new MonthFindings(store.get(), site).each(in.get(MONTH), in.now(), progress, taker);
        } else {
            book.eachNow(site, in.now(), progress, taker);
        }
    }

    /** Turns the number of jobs judged so far into steps of progress. */
    static LongConsumer judged(Invocation in, String what) {
        Progress progress = in.progress();
        progress.begin(what, 0);
        long[] before = {0};
        return jobs -> {
            progress.step(jobs - before[0]);
            before[0] = jobs;
        };
    }

    private ReviewFilter filter(Invocation in, List<Site> reviewed) {
        Optional<String> campaign = in.find(CAMPAIGN);
        campaign.ifPresent(c -> KnownCampaign.of(c, new PackBook(store.get()).all()));
        return new ReviewFilter(
                campaign,
                in.all(RULE),
                in.all(SEVERITY),
                in.has(AS_OF) || in.has(KnownEntry.OPTION) ? in.find(MONTH) : Optional.empty(),
                in.find(STATE),
                in.find(JOB).map(job -> subjects(job, reviewed)));
    }

    private Map<String, JobSubjects> subjects(String job, List<Site> reviewed) {
        Map<String, JobSubjects> bySite = new HashMap<>();
        for (Site site : reviewed) {
            JobSubjects.of(store.get(), site, job).ifPresent(s -> bySite.put(site.site(), s));
        }
        if (bySite.isEmpty()) {
            throw new Refused(
                    "job \"" + job + "\"",
                    "there is no such job",
                    "job list shows those there are");
        }
        return bySite;
    }
}
