package counterbench.journal.store;

import static counterbench.db.generated.Tables.ENTRY;
import static counterbench.db.generated.Tables.FACT_REF;

import counterbench.db.Scratch;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.Booking;
import counterbench.journal.ContentHash;
import counterbench.journal.Draft;
import counterbench.journal.Entry;
import counterbench.journal.SealedMonths;
import counterbench.journal.Sha256;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.impl.DSL;

/**
 * A batch that is written in pieces before its entry is: facts get their lines, and the hash grows
 * with them.
 */
public final class StagedBatch {
    private final Site site;
    private final long number;
    private final SealedMonths sealed;
    private final FactWriter writer;
    private int late;
    private final ContentHash content = new ContentHash(new Sha256());
    private final Touched touched = new Touched();
    private final Set<FactKind> kinds = EnumSet.noneOf(FactKind.class);

    /** Facts that have their lines. */
    public static final class Lines {
        private final List<FactWriter.Placed> facts = new ArrayList<>();
    }

    /**
     * @param sealed the months that are closed when it begins
     * @param scratch where it remembers the jobs that it brings
     */
    public StagedBatch(Site site, long number, SealedMonths sealed, Scratch scratch) {
        this.sealed = sealed;
        this.site = site;
        this.number = number;
        this.writer = FactWriter.forImport(site.no(), number, scratch);
    }

    /** The batch's number. */
    public long number() {
        return number;
    }

    /** How many facts it has. */
    public int count() {
        return content.count();
    }

    /** Gives facts the next lines of the entry to come. */
    public Lines place(List<FactRow> rows) {
        Lines lines = new Lines();
        for (FactRow row : rows) {
            int line = content.count() + 1;
            var booked = Booking.of(site, row, sealed).orElse(null);
            late += Booking.happenedIn(site, row).equals(Optional.ofNullable(booked)) ? 0 : 1;
            content.add(line, booked, row);
            touched.add(row);
            kinds.add(row.kind());
            lines.facts.add(new FactWriter.Placed(line, booked, row));
        }
        return lines;
    }

    /**
     * Writes placed facts. If the transaction is undone, {@link #forget} before writing them again.
     */
    public void write(DSLContext sql, Lines lines) {
        writer.write(sql, lines.facts);
    }

    /** Forgets keys and names that were looked up. */
    public void forget() {
        writer.forget();
    }

    /** Posts the batch as the site's next entry. */
    public Entry post(DSLContext sql, Draft draft) {
        JooqJournal.Head head = JooqJournal.Head.lock(sql, site.no());
        refuseIfSealedSince(sql);
        return JooqJournal.post(sql, head, draft, number, content, touched);
    }

    /** What was booked while a month was open cannot be posted once it is closed. */
    private void refuseIfSealedSince(DSLContext sql) {
        SealReader.of(sql, site.no())
                .last()
                .filter(last -> sealed.of(last.month()).isEmpty())
                .ifPresent(
                        last -> {
                            throw new Refused(
                                    "import",
                                    last.month() + " was sealed while it went on",
                                    "import again; what is of that month is then booked in the"
                                            + " first open one");
                        });
    }

    /** How many of its facts are booked in a later month than they happened in. */
    public int late() {
        return late;
    }

    /**
     * Whether an entry posted after the one of that number holds a row under a key or ref of this
     * batch, so that what was known already has to be asked again. Ask with the site's head locked.
     */
    public boolean collidesWithEntriesAfter(DSLContext sql, long known) {
        List<Long> since =
                sql.select(ENTRY.BATCH)
                        .from(ENTRY)
                        .where(ENTRY.SITE_NO.eq((short) site.no()), ENTRY.NUMBER.gt(known))
                        .fetch(ENTRY.BATCH);
        return !since.isEmpty()
                && (kinds.stream().anyMatch(k -> sharesKey(sql, k, since))
                        || sharesRef(sql, since));
    }

    /** The number of the newest entry, with the head locked until the transaction ends. */
    public static long lockHead(DSLContext sql, int siteNo) {
        return JooqJournal.Head.lock(sql, siteNo).number();
    }

    private boolean sharesKey(DSLContext sql, FactKind kind, List<Long> since) {
        if (!kind.hasKey()) {
            return false;
        }
        FactTable table = FactTable.of(kind);
        Table<?> other = table.table().as("other");
        Condition same = DSL.noCondition();
        for (String heading : kind.key()) {
            same = same.and(same(table.column(heading), other));
        }
        return sql.fetchExists(
                DSL.selectOne()
                        .from(other)
                        .join(table.table())
                        .on(same)
                        .where(other.field(table.batch()).in(since), table.batch().eq(number)));
    }

    private static <T> Condition same(Field<T> field, Table<?> other) {
        return other.field(field).eq(field);
    }

    private boolean sharesRef(DSLContext sql, List<Long> since) {
        var other = FACT_REF.as("other");
        return sql.fetchExists(
                DSL.selectOne()
                        .from(other)
                        .join(FACT_REF)
                        .on(
                                FACT_REF.SITE_NO.eq(other.SITE_NO),
                                FACT_REF.KIND.eq(other.KIND),
                                FACT_REF.REF.eq(other.REF))
                        .where(other.BATCH.in(since), FACT_REF.BATCH.eq(number)));
    }
}
