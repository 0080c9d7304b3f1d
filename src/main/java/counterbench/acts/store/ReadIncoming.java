package counterbench.acts.store;

import counterbench.acts.rack.Incoming;
import counterbench.db.Store;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.Collection;

/** Looks up the cores that may arrive in a yard. */
public final class ReadIncoming {
    private final Store store;

    public ReadIncoming(Store store) {
        this.store = store;
    }

    /**
     * What may arrive.
     *
     * @param tags the cores that do
     * @param here the site in whose yard
     * @param then when it arrives
     * @param now the clock
     */
    public Incoming of(Site here, Collection<String> tags, Instant then, Instant now) {
        ReadCoresAway away = new ReadCoresAway(store);
        return new Incoming(
                here, away.wherever(tags, then), away.wherever(tags, now), () -> away.at(now));
    }
}
