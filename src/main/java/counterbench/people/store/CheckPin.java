package counterbench.people.store;

import counterbench.db.Store;
import counterbench.people.Person;
import counterbench.people.PersonName;
import counterbench.people.Pin;
import counterbench.people.SignIn;
import counterbench.people.Tries;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;

/** Checks PINs against the store, which counts the wrong ones of all shells together. */
public final class CheckPin implements SignIn {
    private final Supplier<Store> store;
    private final InstantSource clock;

    public CheckPin(Supplier<Store> store, InstantSource clock) {
        this.store = store;
        this.clock = clock;
    }

    /** Either a person or a problem. A thrown refusal would undo the count of wrong tries. */
    private record Outcome(@Nullable Person person, @Nullable Problem problem) {
        static Outcome refused(String name, String because, String todo) {
            return new Outcome(null, new Problem("sign-in of \"" + name + "\"", because, todo));
        }

        Person personOrRefuse() {
            Person found = person;
            if (found == null) {
                throw new Refused(problem == null ? List.of() : List.of(problem));
            }
            return found;
        }
    }

    @Override
    public Person signIn(String name, Pin pin) {
        Instant now = clock.instant();
        return store.get().write(sql -> check(sql, name, pin, now)).personOrRefuse();
    }

    @Override
    public Person stillThere(Person person) {
        Person now = store.get().read(sql -> JooqPeople.get(sql, person.name()));
        if (!now.isActive()) {
            throw new Refused("this act", now.name() + " acts no more", "sign in as somebody else");
        }
        return now;
    }

    private static Outcome check(DSLContext sql, String name, Pin pin, Instant now) {
        Optional<Person> person = JooqPeople.find(sql, name);
        if (person.isEmpty()) {
            return unknown(sql, name);
        }
        if (!person.get().isActive()) {
            return Outcome.refused(name, "acts no more", "a lead can change that with person role");
        }
        return JooqPins.lock(sql, name)
                .map(kept -> check(sql, person.get(), kept, pin, now))
                .orElseGet(
                        () ->
                                Outcome.refused(
                                        name,
                                        "no PIN is set yet",
                                        "a lead sets one with person pin"));
    }

    private static Outcome unknown(DSLContext sql, String name) {
        return JooqSites.all(sql).isEmpty()
                ? new Outcome(null, JooqSites.notSetUp("sign-in of \"" + name + "\""))
                : new Outcome(null, PersonName.unknown(name, JooqPeople.names(sql)));
    }

    private static Outcome check(
            DSLContext sql, Person person, JooqPins.Kept kept, Pin pin, Instant now) {
        Duration left = kept.tries().left(now);
        if (!left.isZero()) {
            return Outcome.refused(
                    person.name(), "too many wrong PINs were typed", "wait " + words(left));
        }
        if (kept.pin().isOf(pin)) {
            JooqPins.keep(sql, person.name(), Tries.NONE);
            return new Outcome(person, null);
        }
        Tries tries = kept.tries().failed(now);
        JooqPins.keep(sql, person.name(), tries);
        Duration wait = tries.left(now);
        return Outcome.refused(
                person.name(),
                "that is not the PIN",
                wait.isZero() ? "type it again" : "wait " + words(wait) + ", then type it again");
    }

    private static String words(Duration left) {
        long seconds = left.plusNanos(999_999_999).toSeconds();
        return seconds < 120 ? seconds + " seconds" : (seconds + 59) / 60 + " minutes";
    }
}
