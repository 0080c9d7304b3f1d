package counterbench.shell;

import counterbench.db.Store;
import counterbench.people.store.JooqSites;
import counterbench.people.store.StaffBook;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** The site at which a command acts, and what to do where that cannot be told. */
public final class SiteChoice {
    private final Supplier<Store> store;

    public SiteChoice(Supplier<Store> store) {
        this.store = store;
    }

    /**
     * The site that the line, the shell or the environment names, or the only one that there is.
     *
     * @throws Refused if there is none, or several and none is named
     */
    public Site of(Invocation in) {
        List<Site> sites = all(in);
        Optional<String> named = in.site();
        if (named.isPresent()) {
            return named(named.get(), sites);
        }
        if (sites.size() > 1) {
            throw new Refused(
                    in.commandName(),
                    "the store has several sites: " + names(sites),
                    "say which with --site, or set " + Invocation.SITE_VARIABLE);
        }
        return sites.get(0);
    }

    /**
     * The named site, or all of them where none is named.
     *
     * @throws Refused if there is none
     */
    public List<Site> named(Invocation in) {
        List<Site> sites = all(in);
        return in.site().map(name -> List.of(named(name, sites))).orElse(sites);
    }

    private List<Site> all(Invocation in) {
        List<Site> sites = new StaffBook(store.get()).sites();
        if (sites.isEmpty()) {
            throw new Refused(List.of(JooqSites.notSetUp(in.commandName())));
        }
        return sites;
    }

    private static Site named(String name, List<Site> sites) {
        return sites.stream()
                .filter(site -> site.site().equals(name))
                .findFirst()
                .orElseThrow(() -> unknown(name, sites));
    }

    private static Refused unknown(String name, List<Site> sites) {
        List<String> known = sites.stream().map(Site::site).toList();
        return new Refused(
                "site \"" + name + "\"",
                "there is no such site",
                NearMatch.of(name, known)
                        .map(near -> "did you mean " + near + "?")
                        .orElse("there are " + names(sites)));
    }

    private static String names(List<Site> sites) {
        return String.join(", ", sites.stream().map(Site::site).toList());
    }
}
