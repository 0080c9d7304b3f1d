package counterbench.shell.counter;

import counterbench.acts.Transit;
import counterbench.acts.store.ReadTransit;
import counterbench.db.Store;
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
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Shows what is on the way between sites for too long.
 *
 * <p>Where a site is asked about, times are those of its clocks, as on its rack and as its {@code
 * --as-of} is read, also for what it is to get. Without one there are several clocks, and a row
 * bears the time of the site that sent it: whoever looks for it goes to that site first, and finds
 * this time in its journal and on its papers. Of a sender that keeps its book elsewhere no clock is
 * known; its core is told by that of the site whose core it is.
 */
public final class TransitCommand extends BaseCommand {
    private static final long USUAL_DAYS = 7;
    private static final long MOST_DAYS = 36_500;
    private static final Option<Long> LONGER_THAN =
            Option.of(
                    "longer-than",
                    "DAYS",
                    Readings.WHOLE_NUMBER,
                    "for how many days; 7 unless said, 0 for all that is on the way");
    private static final Option<WrittenTime> AS_OF =
            Option.of("as-of", "TIME", Readings.TIME, "as of when; now unless said");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public TransitCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of(
                                "transit",
                                Group.PARTS_COUNTER,
                                "Show what is on the way between sites for longer than a week")
                        .takes(
                                LONGER_THAN,
                                AS_OF,
                                Options.SITE.completedBy(new LiveNames(store).sites()))
                        .printsRows()
                        .example("transit")
                        .example("transit --longer-than 0 --format csv")
                        .note(
                                "With a site, what it sent and what it is to get. Kits and"
                                        + " parts that were sent to a site that keeps its book"
                                        + " elsewhere are not shown; cores are, until they leave.")
                        .note(
                                "Times are those of the site; without one, each is that of the site"
                                        + " which sent it."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        long days = in.find(LONGER_THAN).orElse(USUAL_DAYS);
        if (days < 0 || days > MOST_DAYS) {
            throw in.wrong("--longer-than " + days + " is no number of days; write it as 7");
        }
        List<Site> shown = sites.named(in);
        Instant asOf = in.find(AS_OF).map(time -> time.at(shown.get(0).zone())).orElse(in.now());
        List<Transit> found =
                new ReadTransit(store.get())
                        .all(asOf).stream()
                                .filter(t -> days == 0 || t.isLongerThan(days, asOf))
                                .filter(t -> shown.stream().anyMatch(t::concerns))
                                .toList();
        write(in, shown, found, asOf);
        in.tell(
                found.isEmpty()
                        ? "nothing is on the way for so long"
                        : "look for it at both sites: kit arrive, part arrive, core arrive, or reverse what was"
                                + " never sent");
        return Status.DONE;
    }

    /** The site by whose clocks it is told. */
    private static Site clock(List<Site> shown, Transit transit) {
        return Stream.of(transit.from(), Objects.toString(transit.owner(), transit.to()))
                .flatMap(name -> shown.stream().filter(site -> site.site().equals(name)))
                .findFirst()
                .orElse(shown.get(0));
    }

    private static void write(Invocation in, List<Site> shown, List<Transit> found, Instant asOf) {
        try (Rows rows =
                in.rows(
                        Column.text("from"),
                        Column.text("to"),
                        Column.text("kit"),
                        Column.text("part"),
                        Column.number("quantity"),
                        Column.text("lot"),
                        Column.text("sent_at"),
                        Column.number("days"),
                        Column.text("core"),
                        Column.text("core_of").asSpare())) {
            for (Transit t : found) {
                rows.add(
                        t.from(),
                        t.to(),
                        t.kit(),
                        t.part(),
                        t.quantity(),
                        t.lot(),
                        clock(shown, t).wallTime(t.sentAt()),
                        t.days(asOf),
                        t.core(),
                        t.owner());
            }
        }
    }
}
