package counterbench.shell.counter;

import counterbench.acts.Expiring;
import counterbench.acts.store.ReadExpiring;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Options;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.Unreadable;
import counterbench.shell.acts.LiveNames;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.time.LocalDate;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Shows what is on the shelf and expires soon. */
public final class ExpiryCommand extends BaseCommand {
    private static final long USUAL_DAYS = 90;
    private static final Pattern DAYS = Pattern.compile("([0-9]{1,5}) ?d?");
    private static final Option<Long> WITHIN =
            Option.of(
                    "within", "DAYS", ExpiryCommand::days, "how many days ahead; 90d unless said");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public ExpiryCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of(
                                "expiry",
                                Group.PARTS_COUNTER,
                                "Show kits and lots on the shelf that expire, the soonest first")
                        .takes(WITHIN, Options.SITE.completedBy(new LiveNames(store).sites()))
                        .printsRows()
                        .example("expiry")
                        .example("expiry --within 30d --format csv")
                        .note("What is expired already stands first, with days below zero."));
        this.store = store;
        this.sites = sites;
    }

    private static long days(String text) {
        Matcher days = DAYS.matcher(text.strip());
        if (!days.matches()) {
            throw new Unreadable("is no number of days; write it as 90d");
        }
        return Long.parseLong(days.group(1));
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        LocalDate today = site.dayOf(in.now());
        LocalDate last = today.plusDays(in.find(WITHIN).orElse(USUAL_DAYS));
        try (Rows rows =
                in.rows(
                        Column.text("expires_on"),
                        Column.number("days_left"),
                        Column.text("kit"),
                        Column.text("part"),
                        Column.text("lot"),
                        Column.number("quantity"))) {
            for (Expiring goods : new ReadExpiring(store.get()).until(site, in.now(), last)) {
                rows.add(
                        goods.until(),
                        goods.daysLeft(today),
                        goods.kit(),
                        goods.part(),
                        goods.lot(),
                        goods.quantity());
            }
        }
        return Status.DONE;
    }
}
