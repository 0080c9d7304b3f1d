package counterbench.shell.review;

import counterbench.db.Store;
import counterbench.people.Person;
import counterbench.people.store.StaffBook;
import counterbench.review.store.OpenStops;
import counterbench.shared.Site;
import counterbench.shell.Session;
import counterbench.shell.console.PromptText;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The prompt of somebody who is signed in: the site, who sits here, and how many findings of
 * severity stop are open there; a question mark where much has to be reviewed first.
 */
public final class StopsPrompt implements PromptText {
    private static final String NOBODY = "counterbench> ";

    private final Session session;
    private final Supplier<Store> store;
    private final InstantSource clock;
    private @Nullable OpenStops openStops;

    public StopsPrompt(Session session, Supplier<Store> store, InstantSource clock) {
        this.session = session;
        this.store = store;
        this.clock = clock;
    }

    /** Nothing is read from the store before somebody signs in, so that the shell opens at once. */
    @Override
    public String text() {
        return session.person().map(this::text).orElse(NOBODY);
    }

    private String text(Person person) {
        Optional<Site> site = site();
        return site.map(s -> s.site() + " ").orElse("")
                + person.name()
                + site.map(this::stops).orElse("")
                + "> ";
    }

    /** The site chosen here, or the only one that there is. */
    private Optional<Site> site() {
        List<Site> sites = new StaffBook(store.get()).sites();
        return sites.stream()
                .filter(site -> session.site().map(site.site()::equals).orElse(sites.size() == 1))
                .findFirst();
    }

    private String stops(Site site) {
        OptionalInt open = openStops().count(site, clock.instant());
        if (open.isEmpty()) {
            return ", ? stop";
        }
        return open.getAsInt() == 0 ? "" : ", " + open.getAsInt() + " stop";
    }

    private OpenStops openStops() {
        OpenStops kept = openStops == null ? new OpenStops(store.get()) : openStops;
        openStops = kept;
        return kept;
    }
}
