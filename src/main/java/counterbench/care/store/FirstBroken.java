package counterbench.care.store;

import counterbench.journal.store.Posted;
import counterbench.journal.store.Verification;
import counterbench.shared.Address;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Keeps the first fact, by its place in the journal, of all that are found not to hold. */
final class FirstBroken {
    private final Posted posted;
    private @Nullable Address first;
    private String why = "";

    FirstBroken(Posted posted) {
        this.posted = posted;
    }

    void note(long batch, int line, String because) {
        Address address = address(batch, line);
        if (first == null || address.compareTo(first) < 0) {
            first = address;
            why = "fact " + address + " " + because;
        }
    }

    /** A fact's place in the journal. */
    Address address(long batch, int line) {
        return new Address(posted.numberOf(batch), line);
    }

    Optional<Verification.Broken> found() {
        return Optional.ofNullable(first).map(at -> new Verification.Broken(at.entry(), why));
    }
}
