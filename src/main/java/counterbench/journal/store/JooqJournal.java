package counterbench.journal.store;

import static counterbench.db.generated.Sequences.BATCH_NO;
import static counterbench.db.generated.Tables.ENTRY;
import static counterbench.db.generated.Tables.JOURNAL_HEAD;

import counterbench.db.ConnectionBroken;
import counterbench.db.Scratch;
import counterbench.db.Store;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.Booking;
import counterbench.journal.Chain;
import counterbench.journal.ContentHash;
import counterbench.journal.Draft;
import counterbench.journal.Entry;
import counterbench.journal.SealedMonths;
import counterbench.journal.Sha256;
import counterbench.shared.StoreUnusable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.jooq.Record2;
import org.jooq.ResultQuery;
import org.jooq.SelectConditionStep;
import org.jooq.exception.DataAccessException;

/**
 * Writes entries. An act locks its site's head, decides, writes its facts and its entry, and
 * commits, all in one transaction; when this returns, the entry is on the disk.
 */
public final class JooqJournal {
    /** Shells that serve the embedded store may end one after another. */
    private static final int TRIES = 5;

    private final Store store;

    public JooqJournal(Store store) {
        this.store = store;
    }

    /** Records facts that need no decision on what the store holds. */
    public Entry record(Draft draft, List<FactRow> rows) {
        return record(draft, sql -> rows);
    }

    /**
     * Records what the decision gives; it is made while the site's head is locked, so that what it
     * read still holds when it is written. A refusal thrown by it leaves nothing behind.
     */
    public Entry record(Draft draft, Function<DSLContext, List<FactRow>> decide) {
        for (int tries = 1; ; tries++) {
            try {
                return store.write(sql -> append(sql, draft, decide));
            } catch (DataAccessException | StoreUnusable e) {
                // The connection may have broken after the commit: the entry's own identifier
                // tells.
                Optional<Entry> written =
                        store.again(() -> store.read(sql -> EntryReader.byId(sql, draft.id())));
                if (written.isPresent()) {
                    return written.get();
                }
                if (!(e instanceof ConnectionBroken) || tries == TRIES) {
                    throw e;
                }
            }
        }
    }

    /**
     * Records facts in a transaction that does more than that, such as making the site that they
     * are the first of.
     */
    public static Entry recordIn(DSLContext sql, Draft draft, List<FactRow> rows) {
        return append(sql, draft, open -> rows);
    }

    private static Entry append(
            DSLContext sql, Draft draft, Function<DSLContext, List<FactRow>> decide) {
        Head head = Head.lock(sql, draft.site().no());
        List<FactRow> rows = decide.apply(sql);
        SealedMonths sealed = SealReader.of(sql, draft.site().no());
        long batch = Objects.requireNonNull(sql.nextval(BATCH_NO));
        ContentHash content = new ContentHash(new Sha256());
        Touched touched = new Touched();
        List<FactWriter.Placed> placed = new ArrayList<>();
        for (FactRow row : rows) {
            var fact =
                    new FactWriter.Placed(
                            placed.size() + 1,
                            Booking.of(draft.site(), row, sealed).orElse(null),
                            row);
            placed.add(fact);
            content.add(fact.line(), fact.booked(), row);
        }
        rows.stream().flatMap(row -> touching(sql, draft, row)).forEach(touched::add);
        try (Scratch scratch = new Scratch()) {
            FactWriter.forAct(draft.site().no(), batch, scratch).write(sql, placed);
        }
        return post(sql, head, draft, batch, content, touched);
    }

    private static Stream<FactRow> touching(DSLContext sql, Draft draft, FactRow row) {
        return row.kind() == FactKind.REVERSALS && draft.reverses() != null
                ? TakenBack.by(row, sql, (short) draft.site().no(), draft.reverses()).stream()
                : Stream.of(row);
    }

    /** Links an entry for a batch whose facts are written, and moves the head. */
    static Entry post(
            DSLContext sql,
            Head head,
            Draft draft,
            long batch,
            ContentHash content,
            Touched touched) {
        Entry entry =
                Chain.link(
                        head.hash(),
                        draft.site().no(),
                        draft.site().site(),
                        head.number() + 1,
                        draft.id(),
                        draft.at(),
                        draft.person(),
                        draft.kind(),
                        draft.source(),
                        draft.reverses(),
                        content.count(),
                        content.hex());
        insert(sql, entry, batch);
        touched.write(sql, entry.siteNo(), entry.number());
        sql.update(JOURNAL_HEAD)
                .set(JOURNAL_HEAD.LAST_NUMBER, entry.number())
                .set(JOURNAL_HEAD.LAST_HASH, entry.hash())
                .where(JOURNAL_HEAD.SITE_NO.eq((short) entry.siteNo()))
                .execute();
        return entry;
    }

    private static void insert(DSLContext sql, Entry entry, long batch) {
        sql.insertInto(ENTRY)
                .set(ENTRY.SITE_NO, (short) entry.siteNo())
                .set(ENTRY.NUMBER, entry.number())
                .set(ENTRY.ID, entry.id())
                .set(ENTRY.BATCH, batch)
                .set(ENTRY.RECORDED_AT, entry.recordedAt())
                .set(ENTRY.PERSON, entry.person())
                .set(ENTRY.KIND, entry.kind())
                .set(ENTRY.SOURCE, entry.source())
                .set(ENTRY.REVERSES, entry.reverses())
                .set(ENTRY.FACT_COUNT, entry.factCount())
                .set(ENTRY.CONTENT_HASH, entry.contentHash())
                .set(ENTRY.HASH, entry.hash())
                .execute();
    }

    /** The locked end of a site's chain. */
    record Head(long number, String hash) {
        static Head lock(DSLContext sql, int siteNo) {
            return found(query(sql, siteNo).forUpdate(), siteNo);
        }

        static Head read(DSLContext sql, int siteNo) {
            return found(query(sql, siteNo), siteNo);
        }

        private static SelectConditionStep<Record2<Long, String>> query(
                DSLContext sql, int siteNo) {
            return sql.select(JOURNAL_HEAD.LAST_NUMBER, JOURNAL_HEAD.LAST_HASH)
                    .from(JOURNAL_HEAD)
                    .where(JOURNAL_HEAD.SITE_NO.eq((short) siteNo));
        }

        private static Head found(ResultQuery<Record2<Long, String>> query, int siteNo) {
            return query.fetchOptional(r -> new Head(r.value1(), r.value2()))
                    .orElseThrow(
                            () -> new StoreUnusable("site number " + siteNo + " has no journal"));
        }
    }
}
