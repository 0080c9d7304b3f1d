package counterbench.shell.people;

import counterbench.db.Store;
import counterbench.people.Person;
import counterbench.people.store.StaffBook;
import counterbench.shared.StoreUnusable;
import java.util.List;
import java.util.function.Supplier;

/** What completion offers for people. */
final class Proposed {
    private Proposed() {}

    /** Those who act, or nobody where the store cannot be asked just now. */
    static List<String> people(Supplier<Store> store) {
        try {
            return new StaffBook(store.get())
                    .people().stream().filter(Person::isActive).map(Person::name).toList();
        } catch (StoreUnusable e) {
            return List.of();
        }
    }
}
