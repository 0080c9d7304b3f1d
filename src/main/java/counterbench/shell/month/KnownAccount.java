package counterbench.shell.month;

import counterbench.db.Store;
import counterbench.facts.FactKind;
import counterbench.labels.store.LabelBook;
import counterbench.month.store.SiteBalances;
import counterbench.people.store.StaffBook;
import counterbench.review.store.ReviewSite;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.stock.Account;
import java.time.Instant;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/** Tells an account that there is, even if it holds nothing now, from one that there never was. */
final class KnownAccount {
    private final Store store;
    private final Site site;

    KnownAccount(Store store, Site site) {
        this.store = store;
        this.site = site;
    }

    /**
     * Refuses an account of one name that nothing bears and no move ever touched.
     *
     * @throws Refused with the nearest of its kind
     */
    void mustBe(AskedAccount asked, Instant now) {
        String name = asked.name();
        if (name == null) {
            return;
        }
        Set<String> known = new TreeSet<>(names(asked.kind()));
        if (!known.contains(name)) {
            known.addAll(touched(asked.kind(), now));
        }
        if (!known.contains(name)) {
            throw new Refused(
                    "account \"" + new Account(asked.kind(), name) + "\"",
                    "there is no such " + what(asked.kind()),
                    NearMatch.of(name, known)
                            .map(near -> "did you mean " + new Account(asked.kind(), near) + "?")
                            .orElse(
                                    "balance --account "
                                            + asked.kind()
                                            + " shows all that hold something"));
        }
    }

    private Set<String> names(Account.Kind kind) {
        LabelBook book = new LabelBook(store, site);
        Set<String> names = new TreeSet<>();
        switch (kind) {
            case KIT -> names.addAll(book.names(FactKind.KITS));
            case BENCH, VEHICLE -> names.addAll(book.names(FactKind.JOBS));
            case CORE -> names.addAll(book.names(FactKind.CORES));
            case TRANSIT -> new StaffBook(store).sites().forEach(each -> names.add(each.site()));
            default -> {
                // There is one account of the kind, without a name.
            }
        }
        return names;
    }

    /** Kits that came from another site, and whatever paper names that nobody knows. */
    private Set<String> touched(Account.Kind kind, Instant now) {
        Set<String> names = new TreeSet<>();
        new SiteBalances(store)
                .each(
                        site,
                        now,
                        ReviewSite.NEWEST,
                        account -> {
                            if (account.kind() == kind) {
                                names.add(Objects.requireNonNull(account.name()));
                            }
                            return false;
                        },
                        row -> {});
        return names;
    }

    private static String what(Account.Kind kind) {
        return switch (kind) {
            case KIT -> "kit";
            case BENCH, VEHICLE -> "job";
            case CORE -> "core";
            case TRANSIT -> "site";
            default -> "account";
        };
    }
}
