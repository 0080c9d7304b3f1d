package counterbench.people.store;

import counterbench.db.Store;
import counterbench.people.Person;
import counterbench.shared.Site;
import java.util.List;
import java.util.Set;

/** Reads sites and people, for those who know no SQL. */
public final class StaffBook {
    private final Store store;

    public StaffBook(Store store) {
        this.store = store;
    }

    /**
     * Every site, by short name. Commands ask this first, so a shell that served the store may have
     * ended since the last one.
     */
    public List<Site> sites() {
        return store.again(() -> store.read(JooqSites::all));
    }

    /** Everybody by name, those who act no more as well. */
    public List<Person> people() {
        return store.read(JooqPeople::all);
    }

    /**
     * The person of that name.
     *
     * @throws counterbench.shared.Refused if there is none
     */
    public Person person(String name) {
        return store.read(sql -> JooqPeople.get(sql, name));
    }

    /** The names of those who have a PIN. */
    public Set<String> namesWithPin() {
        return store.read(JooqPins::names);
    }
}
