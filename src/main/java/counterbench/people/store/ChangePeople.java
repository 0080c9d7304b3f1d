package counterbench.people.store;

import counterbench.db.Store;
import counterbench.journal.Draft;
import counterbench.journal.Entry;
import counterbench.journal.store.JooqJournal;
import counterbench.people.Person;
import counterbench.people.PersonName;
import counterbench.people.Role;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jooq.DSLContext;

/**
 * What a lead does to people: adds them, changes their roles, gives them a PIN, ends them. People
 * change their own PIN themselves.
 */
public final class ChangePeople {
    private final JooqJournal journal;

    public ChangePeople(Store store) {
        this.journal = new JooqJournal(store);
    }

    /**
     * Who acts, where and when.
     *
     * @param site whose journal bears the entry
     * @param act the command as typed, which never holds a PIN
     */
    public record By(Person person, Site site, Instant now, String act) {
        Draft draft(String kind) {
            return Draft.of(site, now, person.name(), kind, act);
        }
    }

    /**
     * Adds a person with a PIN.
     *
     * @throws Refused if the name or PIN cannot be, or is not a lead's to give
     */
    public Entry add(By by, String name, Set<Role> roles, PinHash pin) {
        String tidied = PersonName.tidied(name);
        return journal.record(
                by.draft("person add"),
                sql -> {
                    mustBeLead(sql, by);
                    refuse(PersonName.problemOf(tidied, JooqPeople.names(sql)));
                    JooqPins.set(sql, tidied, pin);
                    return List.of(
                            PeopleFacts.person(tidied, roles), PeopleFacts.pin(tidied, by.now()));
                });
    }

    /**
     * Gives a person another PIN. Everybody may change the own one; the others' are the lead's.
     *
     * @throws Refused if it is not the person's to change
     */
    public Entry pin(By by, String name, PinHash pin) {
        return journal.record(
                by.draft("person pin"),
                sql -> {
                    Person person = JooqPeople.get(sql, name);
                    if (!person.name().equals(by.person().name())) {
                        mustBeLead(sql, by);
                    }
                    JooqPins.set(sql, name, pin);
                    return List.of(PeopleFacts.pin(name, by.now()));
                });
    }

    /**
     * Gives a person other roles, instead of those that the person has.
     *
     * @throws Refused if nobody would be lead any more
     */
    public Entry roles(By by, String name, Set<Role> roles) {
        return change(by, "person role", name, roles);
    }

    /**
     * Ends a person, who acts no more; what was recorded stays under the name.
     *
     * @throws Refused if nobody would be lead any more
     */
    public Entry end(By by, String name) {
        return change(by, "person end", name, Set.of());
    }

    private Entry change(By by, String kind, String name, Set<Role> roles) {
        return journal.record(
                by.draft(kind),
                sql -> {
                    mustBeLead(sql, by);
                    Person person = JooqPeople.get(sql, name);
                    refuse(problemOf(by.act(), person, roles, othersWithPin(sql, name)));
                    return List.of(PeopleFacts.roles(name, by.now(), roles));
                });
    }

    /** A lead without a PIN cannot sign in, and so leads nobody. */
    private static List<Person> othersWithPin(DSLContext sql, String name) {
        Set<String> able = JooqPins.names(sql);
        return JooqPeople.all(sql).stream()
                .filter(other -> !other.name().equals(name) && able.contains(other.name()))
                .toList();
    }

    private static Optional<Problem> problemOf(
            String act, Person person, Set<Role> roles, List<Person> others) {
        if (person.roles().equals(roles)) {
            return Optional.of(
                    new Problem(
                            act,
                            person.isActive()
                                    ? person.name() + " has just these roles already"
                                    : person.name() + " acts no more already",
                            "nothing is left to do"));
        }
        boolean leadLeft =
                roles.contains(Role.LEAD)
                        || others.stream().anyMatch(other -> other.roles().contains(Role.LEAD));
        return leadLeft
                ? Optional.empty()
                : Optional.of(
                        new Problem(
                                act,
                                "nobody would be lead any more",
                                "make somebody else lead first, with person role"));
    }

    private static void mustBeLead(DSLContext sql, By by) {
        JooqPeople.mustActAs(sql, by.person(), Role.LEAD, by.act());
    }

    private static void refuse(Optional<Problem> problem) {
        if (problem.isPresent()) {
            throw new Refused(List.of(problem.get()));
        }
    }
}
