package counterbench.people.store;

import static counterbench.db.generated.Tables.PERSON_PIN;

import counterbench.db.generated.tables.records.PersonPinRecord;
import counterbench.people.Tries;
import java.util.Optional;
import java.util.Set;
import org.jooq.DSLContext;

/** PINs in the store, as their hashes. */
final class JooqPins {
    private JooqPins() {}

    /** A person's PIN and the wrong tries on it. */
    record Kept(PinHash pin, Tries tries) {}

    /**
     * The PIN of a person, held until the transaction ends so that tries are counted one by one.
     */
    static Optional<Kept> lock(DSLContext sql, String name) {
        return sql.selectFrom(PERSON_PIN)
                .where(PERSON_PIN.NAME.eq(name))
                .forUpdate()
                .fetchOptional(JooqPins::kept);
    }

    private static Kept kept(PersonPinRecord r) {
        return new Kept(PinHash.kept(r.getPinHash()), new Tries(r.getFailures(), r.getWaitUntil()));
    }

    /** The names of those who have one. */
    static Set<String> names(DSLContext sql) {
        return sql.select(PERSON_PIN.NAME).from(PERSON_PIN).fetchSet(PERSON_PIN.NAME);
    }

    /** Gives a person a PIN, and forgets the wrong tries on the old one. */
    static void set(DSLContext sql, String name, PinHash pin) {
        sql.deleteFrom(PERSON_PIN).where(PERSON_PIN.NAME.eq(name)).execute();
        sql.insertInto(PERSON_PIN)
                .set(PERSON_PIN.NAME, name)
                .set(PERSON_PIN.PIN_HASH, pin.toKeep())
                .set(PERSON_PIN.FAILURES, 0)
                .execute();
    }

    static void keep(DSLContext sql, String name, Tries tries) {
        sql.update(PERSON_PIN)
                .set(PERSON_PIN.FAILURES, tries.failures())
                .set(PERSON_PIN.WAIT_UNTIL, tries.waitUntil())
                .where(PERSON_PIN.NAME.eq(name))
                .execute();
    }
}
