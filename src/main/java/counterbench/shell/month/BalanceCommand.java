package counterbench.shell.month;

import counterbench.db.Store;
import counterbench.labels.store.LabelBook;
import counterbench.month.store.SiteBalances;
import counterbench.review.store.ReviewSite;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
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
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import counterbench.stock.BalanceRow;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** Shows what the accounts of a site hold now. */
public final class BalanceCommand extends BaseCommand {
    private static final Option<AskedAccount> ACCOUNT =
            Option.of(
                    "account",
                    "ACCOUNT",
                    AccountReading::read,
                    "such as STORE, \"KIT(K-2207)\", or BENCH for all benches");
    private static final Option<String> PART =
            Option.of("part", "PART", Readings.TEXT, "only this part");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public BalanceCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("balance", Group.PARTS_COUNTER, "Show what lies where by the book")
                        .takes(
                                ACCOUNT,
                                PART.completedBy(new LiveNames(store).parts()),
                                Options.SITE.completedBy(new LiveNames(store).sites()))
                        .printsRows()
                        .example("balance --account STORE")
                        .example("balance --account \"BENCH(J-118)\"")
                        .example("balance --part QM-4473 --format csv")
                        .note(
                                "Every part adds up to zero over all accounts: SUPPLIER owes what"
                                        + " came in, so it stands below zero."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        Optional<String> part = in.find(PART);
        part.ifPresent(named -> refuseUnlessKnown(site, named));
        Optional<AskedAccount> account = in.find(ACCOUNT);
        account.ifPresent(asked -> new KnownAccount(store.get(), site).mustBe(asked, in.now()));
        try (Rows rows =
                in.rows(
                        Column.text("site"),
                        Column.text("account"),
                        Column.text("part"),
                        Column.number("quantity"))) {
            new SiteBalances(store.get())
                    .each(
                            site,
                            in.now(),
                            ReviewSite.NEWEST,
                            each -> account.filter(asked -> !asked.test(each)).isEmpty(),
                            row -> {
                                if (part.isEmpty() || part.get().equals(row.part())) {
                                    add(rows, site, row);
                                }
                            });
        }
        return Status.DONE;
    }

    private void refuseUnlessKnown(Site site, String part) {
        Set<String> known = new LabelBook(store.get(), site).parts().keySet();
        if (!known.contains(part)) {
            throw new Refused(
                    "part \"" + part + "\"",
                    "no pack, list or receipt knows it",
                    NearMatch.of(part, known)
                            .map(near -> "did you mean " + near + "?")
                            .orElse("balance without --part shows those that there are"));
        }
    }

    private static void add(Rows rows, Site site, BalanceRow row) {
        rows.add(site.site(), row.account(), row.part(), row.quantity());
    }
}
