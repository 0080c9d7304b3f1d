package counterbench.acts.store;

import counterbench.acts.Transit;
import counterbench.db.Store;
import counterbench.people.store.StaffBook;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Looks up what is on the way between sites of the store. */
public final class ReadTransit {
    private final Store store;

    public ReadTransit(Store store) {
        this.store = store;
    }

    /** All that was sent by a time and has not arrived, the oldest first. */
    public List<Transit> all(Instant now) {
        List<Transit> found = new ArrayList<>();
        for (Site to : new StaffBook(store).sites()) {
            store.read(sql -> ReadUnderWay.to(sql, to, now)).all().stream()
                    .map(sending -> Transit.of(to, sending))
                    .forEach(found::add);
        }
        new ReadCoresAway(store)
                .at(now).stream()
                        .filter(away -> away.where().isOnTheWay())
                        .map(Transit::of)
                        .forEach(found::add);
        found.sort(Transit.OLDEST_FIRST);
        return found;
    }
}
