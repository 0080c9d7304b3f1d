package counterbench.shell.rack;

import counterbench.acts.CoreAway;
import counterbench.acts.rack.Board;
import counterbench.acts.rack.BoardLine;
import counterbench.acts.rack.Exposure;
import counterbench.acts.rack.Owed;
import counterbench.acts.rack.Strangers;
import counterbench.acts.store.ReadCoresAway;
import counterbench.acts.store.ReadRack;
import counterbench.campaign.store.PackBook;
import counterbench.cores.CoreState;
import counterbench.db.Store;
import counterbench.review.StatedFinding;
import counterbench.review.store.FindingBook;
import counterbench.review.store.ReviewSite;
import counterbench.shared.Site;
import counterbench.shared.WrittenTime;
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
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
import java.util.function.Predicate;
import java.util.function.Supplier;

/** Shows every core from the vehicle to the return centre's answer, what needs a hand first. */
public final class RackCommand extends BaseCommand {
    private static final Option<CoreState> STATE =
            Option.of("state", "STATE", Readings.oneOf(CoreState.class), "only cores so far along")
                    .asRepeatable();
    private static final Option<String> CAMPAIGN =
            Option.of("campaign", "CAMPAIGN", Readings.TEXT, "only this campaign's cores");
    private static final Option<Boolean> ALL =
            Option.flag("all", "accepted and credited cores as well");
    private static final Option<Boolean> CHARGES =
            Option.flag("charges", "what is owed for cores instead, by campaign and age");
    private static final Option<WrittenTime> AS_OF =
            Option.of("as-of", "TIME", Readings.TIME, "as of when; now unless said");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public RackCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)));
        this.store = store;
        this.sites = sites;
    }

    private static Manual manual(LiveNames names) {
        return Manual.of(
                        "rack",
                        Group.CORE_RACK,
                        "Show the cores on their way back, what needs a hand first")
                .takes(STATE, CAMPAIGN.completedBy(names.campaigns()), ALL, CHARGES, AS_OF)
                .takes(Options.SITE.completedBy(names.sites()))
                .printsRows()
                .example("rack")
                .example("rack --state draining --state drained")
                .example("rack --charges --format csv")
                .note(
                        "What somebody can do now stands first, then what drains, then what is away;"
                                + " in each, what an open stop stands against, then what presses"
                                + " most. Accepted and credited cores are shown by --all, or by"
                                + " their --state.")
                .note(
                        "A charge is owed from the job's completion until the core is accepted or"
                                + " credited. --charges counts days since completion, and cores"
                                + " that were never removed, too.")
                .note(
                        "A core that was sent to another site's yard stays on this board, which says"
                                + " where it lies or is to arrive; its day to ship by does not wait."
                                + " Below the board stand cores of other sites that lie here or are"
                                + " on the way here.")
                .note(
                        "A table says which columns it has no room for; --format csv or json has all"
                                + " of every core.")
                .note(
                        "A drain that was long enough is no permission to ship; the carrier's and the"
                                + " law's rules are the shipper's to check.");
    }

    @Override
    protected Status run(Invocation in) {
        if (in.has(CHARGES) && (in.has(STATE) || in.has(ALL))) {
            throw in.wrong("--charges shows what is owed in every state; leave out --state, --all");
        }
        Site site = sites.of(in);
        Optional<String> campaign = in.find(CAMPAIGN);
        campaign.ifPresent(c -> KnownCampaign.of(c, new PackBook(store.get()).all()));
        Instant asOf = in.find(AS_OF).map(time -> time.at(site.zone())).orElse(in.now());
        List<StatedFinding> findings = findings(in, site, asOf);
        ReadRack rack = new ReadRack(store.get(), site, asOf);
        Predicate<String> wanted = c -> campaign.filter(only -> !only.equals(c)).isEmpty();
        if (in.has(CHARGES)) {
            List<Owed> owed = rack.owed(findings, ReadJobs.shown(in, site));
            ChargeRows.write(
                    in,
                    site,
                    Exposure.of(
                            owed.stream().filter(o -> wanted.test(o.campaign())).toList(),
                            site.dayOf(asOf)));
        } else {
            RackRows.write(in, site, asOf, board(in, site, rack, findings, wanted));
            if (!in.has(STATE)) {
                new Strangers(site, away(asOf, wanted)).told().forEach(in::tell);
            }
        }
        return Status.DONE;
    }

    private List<CoreAway> away(Instant asOf, Predicate<String> wanted) {
        return new ReadCoresAway(store.get())
                .at(asOf).stream()
                        .filter(away -> wanted.test(away.core().job().job().campaign()))
                        .toList();
    }

    private static Board board(
            Invocation in,
            Site site,
            ReadRack rack,
            List<StatedFinding> findings,
            Predicate<String> wanted) {
        List<BoardLine> lines =
                wantsDone(in)
                        ? rack.all(findings, ReadJobs.shown(in, site))
                        : rack.undecided(findings, ReadJobs.shown(in, site));
        return new Board(
                lines.stream()
                        .filter(line -> wanted.test(line.campaign()) && shows(in, line))
                        .toList());
    }

    private List<StatedFinding> findings(Invocation in, Site site, Instant asOf) {
        FindingBook book = new FindingBook(store.get());
        LongConsumer progress = ReadJobs.shown(in, site);
        return in.has(AS_OF)
                ? book.asOf(site, asOf, ReviewSite.NEWEST, ReadRack::isOfCores, progress)
                : book.now(site, asOf, ReadRack::isOfCores, progress);
    }

    private static boolean wantsDone(Invocation in) {
        return in.has(ALL) || in.all(STATE).stream().anyMatch(RackCommand::isDone);
    }

    private static boolean isDone(CoreState state) {
        return state == CoreState.ACCEPTED || state == CoreState.CREDITED;
    }

    private static boolean shows(Invocation in, BoardLine line) {
        CoreState state = line.status().state();
        return in.has(STATE) ? in.all(STATE).contains(state) : in.has(ALL) || !isDone(state);
    }
}
