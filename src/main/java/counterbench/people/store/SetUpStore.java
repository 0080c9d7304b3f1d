package counterbench.people.store;

import counterbench.db.Store;
import counterbench.facts.FactRow;
import counterbench.journal.Draft;
import counterbench.journal.Entry;
import counterbench.journal.store.JooqJournal;
import counterbench.people.NewSite;
import counterbench.people.Person;
import counterbench.people.PersonName;
import counterbench.people.Role;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.exception.IntegrityConstraintViolationException;

/** Sets up the store's sites: the first with its lead, further ones by a lead. */
public final class SetUpStore {
    private static final String KIND = "setup";

    private final Store store;

    public SetUpStore(Store store) {
        this.store = store;
    }

    /**
     * What was set up.
     *
     * @param entry the first entry of the site's journal
     */
    public record Result(Site site, Entry entry) {}

    /** Refuses what could not be set up as the first site, before a PIN is asked for. */
    public static void checkFirst(NewSite asked, String lead) {
        asked.checked(1, Set.of());
        PersonName.problemOf(PersonName.tidied(lead), List.of())
                .ifPresent(
                        problem -> {
                            throw new Refused(List.of(problem));
                        });
    }

    /**
     * Sets up the first site and its lead.
     *
     * @throws Refused if the store is set up already, or something said cannot be
     */
    public Result first(NewSite asked, String lead, PinHash pin, Instant now, String source) {
        String name = PersonName.tidied(lead);
        checkFirst(asked, name);
        return add(asked, name, now, source, sql -> firstFacts(sql, name, pin, now));
    }

    private static List<FactRow> firstFacts(DSLContext sql, String lead, PinHash pin, Instant now) {
        List<Site> sites = JooqSites.all(sql);
        if (!sites.isEmpty()) {
            throw new Refused(
                    "setup",
                    "the store is set up already, with site "
                            + sites.stream().map(Site::site).collect(Collectors.joining(", ")),
                    "sign in as a lead to set up a further site");
        }
        JooqPins.set(sql, lead, pin);
        return List.of(PeopleFacts.person(lead, Set.of(Role.LEAD)), PeopleFacts.pin(lead, now));
    }

    /**
     * Sets up a further site.
     *
     * @param person who asks, a lead
     * @throws Refused if the person is no lead, or something said cannot be
     */
    public Result further(NewSite asked, Person person, Instant now, String source) {
        return add(
                asked,
                person.name(),
                now,
                source,
                sql -> {
                    JooqPeople.mustActAs(sql, person, Role.LEAD, "setup");
                    return List.of();
                });
    }

    /** Facts beside the site's own. */
    @FunctionalInterface
    private interface Beside {
        List<FactRow> facts(DSLContext sql);
    }

    private Result add(NewSite asked, String person, Instant now, String source, Beside beside) {
        try {
            return store.write(sql -> write(sql, asked, person, now, source, beside));
        } catch (IntegrityConstraintViolationException e) {
            throw new Refused(
                    "setup", "somebody else set up a site at the same moment", "try again");
        }
    }

    private static Result write(
            DSLContext sql,
            NewSite asked,
            String person,
            Instant now,
            String source,
            Beside beside) {
        List<FactRow> more = beside.facts(sql);
        Set<String> taken = JooqSites.all(sql).stream().map(Site::site).collect(Collectors.toSet());
        Site site = asked.checked(JooqSites.nextNo(sql), taken);
        JooqSites.add(sql, site);
        List<FactRow> facts = new ArrayList<>(List.of(PeopleFacts.site(site)));
        facts.addAll(more);
        Draft draft = Draft.of(site, now, person, KIND, source);
        return new Result(site, JooqJournal.recordIn(sql, draft, facts));
    }
}
