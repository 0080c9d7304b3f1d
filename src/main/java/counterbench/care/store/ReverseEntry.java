package counterbench.care.store;

import static counterbench.db.generated.Tables.ENTRY;

import counterbench.care.ReversalRequest;
import counterbench.db.Store;
import counterbench.facts.Canonical;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.Draft;
import counterbench.journal.Entry;
import counterbench.journal.store.AllPosted;
import counterbench.journal.store.EntryReader;
import counterbench.journal.store.FactTable;
import counterbench.journal.store.JooqJournal;
import counterbench.journal.store.Reversals;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.people.store.JooqPeople;
import counterbench.people.store.JooqSites;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;

/**
 * Takes back all facts of an entry that still count, or one of them. People take back what they
 * recorded themselves; a lead takes back what others did.
 */
public final class ReverseEntry {
    /** The kind of the entries that reversals make. */
    public static final String ENTRY_KIND = "reverse";

    private final Store store;

    public ReverseEntry(Store store) {
        this.store = store;
    }

    /**
     * Records the reversal.
     *
     * @param act the command as typed
     * @throws Refused if there is nothing there to take back, it is not the person's to do, or
     *     other facts rest on it
     */
    public Entry run(ReversalRequest request, Site site, Person person, Instant now, String act) {
        return run(request, site, person, now, act, UUID.randomUUID());
    }

    /**
     * Records the reversal under an identifier of its own.
     *
     * @param id the identifier of the entry that it makes
     */
    public Entry run(
            ReversalRequest request, Site site, Person person, Instant now, String act, UUID id) {
        Draft draft = new Draft(site, id, now, person.name(), ENTRY_KIND, act, request.entry());
        return new JooqJournal(store)
                .record(draft, sql -> new Decision(sql, site, request).facts(person, now));
    }

    /** One decision, made while the site's head is locked. */
    private record Decision(DSLContext sql, Site site, ReversalRequest request) {
        List<FactRow> facts(Person person, Instant now) {
            Entry entry =
                    EntryReader.byNumber(sql, site.no(), request.entry())
                            .orElseThrow(
                                    () ->
                                            refused(
                                                    "site " + site.site() + " has no such entry",
                                                    "journal show lists the newest"));
            checkPerson(entry, JooqPeople.get(sql, person.name()));
            checkLeft(entry);
            long batch = batchOf(entry);
            checkKinds(kindsIn(batch), person);
            checkRest(batch);
            return List.of(
                    new FactRow(
                            FactKind.REVERSALS,
                            Arrays.asList(
                                    request.entry(),
                                    Canonical.cut(now),
                                    request.reason(),
                                    lineOrNull()),
                            null));
        }

        private @Nullable Long lineOrNull() {
            return request.line().isPresent() ? (long) request.line().getAsInt() : null;
        }

        private Refused refused(String because, String todo) {
            return new Refused("reverse \"" + request.typed() + "\"", because, todo);
        }

        private void checkPerson(Entry entry, Person person) {
            String act = "reverse \"" + request.typed() + "\"";
            if (!entry.person().equals(person.name())) {
                person.mustActAs(Role.LEAD, act + ", which " + entry.person() + " recorded");
            } else if (!person.isActive()) {
                throw refused(person.name() + " acts no more", "ask a lead");
            }
        }

        private void checkLeft(Entry entry) {
            if (entry.kind().equals(ENTRY_KIND)) {
                throw refused(
                        "a reversal is not reversed",
                        "record again what entry " + entry.reverses() + " said");
            }
            Reversals reversals = Reversals.of(sql, site.no());
            int line = request.line().orElse(0);
            if (line > entry.factCount() || (request.line().isPresent() && line < 1)) {
                throw refused(
                        "the entry has "
                                + entry.factCount()
                                + (entry.factCount() == 1 ? " fact" : " facts"),
                        "journal show " + entry.number() + " lists them");
            }
            (line == 0 ? reversals.ofEntry(entry.number()) : reversals.ofLine(entry.number(), line))
                    .ifPresent(
                            by -> {
                                throw refused(
                                        "entry " + by + " reversed it already",
                                        "nothing is left to do");
                            });
            if (reversals.countOfLines(entry.number()) >= entry.factCount()) {
                throw refused("all its facts are reversed already", "nothing is left to do");
            }
        }

        private long batchOf(Entry entry) {
            return Objects.requireNonNull(
                    sql.select(ENTRY.BATCH)
                            .from(ENTRY)
                            .where(
                                    ENTRY.SITE_NO.eq((short) site.no()),
                                    ENTRY.NUMBER.eq(entry.number()))
                            .fetchOne(ENTRY.BATCH));
        }

        private Set<FactKind> kindsIn(long batch) {
            Set<FactKind> kinds = EnumSet.noneOf(FactKind.class);
            for (FactTable table : FactTable.values()) {
                Condition meant = table.siteNo().eq((short) site.no()).and(table.batch().eq(batch));
                if (request.line().isPresent()) {
                    meant = meant.and(table.line().eq(request.line().getAsInt()));
                }
                if (sql.fetchExists(table.table(), meant)) {
                    kinds.add(table.kind());
                }
            }
            return kinds;
        }

        private void checkKinds(Set<FactKind> kinds, Person person) {
            if (kinds.contains(FactKind.SITES)) {
                throw refused(
                        "a site that is set up stays",
                        "set its limit anew with shipment limit, or set up another site");
            }
            if (kinds.contains(FactKind.SEALS)) {
                throw refused(
                        "a sealed month stays sealed",
                        "record what was wrong; it is booked in the first open month");
            }
            if (kinds.contains(FactKind.PINS) || kinds.contains(FactKind.ROLE_CHANGES)) {
                throw refused(
                        "PINs and roles are not taken back but changed",
                        "use person pin, person role or person end");
            }
            if (kinds.contains(FactKind.PEOPLE)) {
                JooqPeople.get(sql, person.name())
                        .mustActAs(Role.LEAD, "reverse \"" + request.typed() + "\"");
            }
        }

        /** Refuses to take away what other facts name. */
        private void checkRest(long batch) {
            AllPosted posted = new AllPosted(sql);
            CountingRows.Counting rest =
                    (no, b, line) ->
                            posted.counts(no, b, line) && !(b == batch && request.covers(line));
            for (Site each : JooqSites.all(sql)) {
                References.firstBroken(sql, each, posted.at(each.no()), rest)
                        .ifPresent(
                                broken -> {
                                    throw refused(
                                            "at site " + each.site() + " " + broken.why(),
                                            "reverse that first");
                                });
            }
        }
    }
}
