package counterbench.acts.store;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Foresight;
import counterbench.acts.Situation;
import counterbench.db.Store;
import counterbench.facts.FactRow;
import counterbench.intake.ImportRights;
import counterbench.intake.store.CheckAct;
import counterbench.journal.Draft;
import counterbench.journal.Entry;
import counterbench.journal.store.EntryReader;
import counterbench.journal.store.JooqJournal;
import counterbench.judgement.Finding;
import counterbench.people.Person;
import counterbench.people.store.JooqPeople;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import org.jooq.DSLContext;

/** Records an act: looks, decides and writes while nobody else records at the site. */
public final class RecordAct {
    private final Store store;
    private final JooqJournal journal;

    public RecordAct(Store store) {
        this.store = store;
        this.journal = new JooqJournal(store);
    }

    /**
     * Who acts, where and when.
     *
     * @param now the time at which it is recorded
     * @param kind the command
     * @param line the command as it was typed or scanned
     * @param entry the identifier of the entry that the act makes
     */
    public record By(Person person, Site site, Instant now, String kind, String line, UUID entry) {
        public By {
            Objects.requireNonNull(person, "person");
            Objects.requireNonNull(site, "site");
            Objects.requireNonNull(now, "now");
        }

        /** One whose entry bears an identifier that nobody else makes. */
        public By(Person person, Site site, Instant now, String kind, String line) {
            this(person, site, now, kind, line, UUID.randomUUID());
        }

        Draft draft() {
            return new Draft(site, entry, now, person.name(), kind, line, null);
        }
    }

    /**
     * What came of it.
     *
     * @param facts what was recorded
     * @param remarks what the person should know besides
     * @param raised findings that there were not before, or will be once the job is completed
     * @param after how things stand now
     */
    public record Recorded(
            Entry entry,
            List<FactRow> facts,
            List<String> remarks,
            List<Finding> raised,
            Situation after) {}

    private record Looked(Foresight before, Instant asOf, Decision decision) {}

    /**
     * Records an act.
     *
     * @throws counterbench.shared.Refused if it cannot be, or is not for the person's roles
     */
    public Recorded run(By by, Act act) {
        AtomicReference<Looked> looked = new AtomicReference<>();
        Entry entry =
                journal.record(
                        by.draft(),
                        sql -> {
                            Looked found = look(sql, by, act);
                            looked.set(found);
                            return found.decision().facts();
                        });
        Looked found = Objects.requireNonNull(looked.get());
        Situation after = store.again(() -> situation(by.site(), found.asOf(), act));
        Decision decision = found.decision();
        return new Recorded(
                entry,
                decision.facts(),
                decision.remarks(),
                found.before().raised(after, act),
                after);
    }

    /**
     * Sees whether an act can be recorded as things stand, and records nothing.
     *
     * @throws counterbench.shared.Refused if it cannot be, or is not for the person's roles
     */
    public void mustBePossible(By by, Act act) {
        store.again(() -> store.read(sql -> look(sql, by, act)));
    }

    /** The entry that an act made under an identifier, even if it was taken back since. */
    public Optional<Entry> made(UUID entry) {
        return store.read(sql -> EntryReader.byId(sql, entry));
    }

    private Looked look(DSLContext sql, By by, Act act) {
        JooqPeople.mustActAsOneOf(sql, by.person(), ImportRights.rolesFor(act.makes()), by.kind());
        Instant asOf = latest(sql, by);
        Situation before = situation(by.site(), asOf, act);
        Decision decision = act.decide(before);
        List<FactRow> checked = CheckAct.checked(sql, by.site(), by.kind(), decision.facts());
        List<String> remarks = new ArrayList<>(decision.remarks());
        remarks.addAll(LateBooking.words(sql, by.site(), checked));
        return new Looked(Foresight.before(before), asOf, new Decision(checked, remarks));
    }

    private Situation situation(Site site, Instant asOf, Act act) {
        return new ReadSituation(store).run(site, asOf, act.named());
    }

    /**
     * Another shell may have recorded since this act was stamped, by a clock that is ahead of this
     * one; what it recorded counts all the same.
     */
    private static Instant latest(DSLContext sql, By by) {
        return EntryReader.latestRecording(sql, by.site().no())
                .filter(by.now()::isBefore)
                .orElse(by.now());
    }
}
