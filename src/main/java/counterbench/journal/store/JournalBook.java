package counterbench.journal.store;

import static counterbench.db.generated.Tables.ENTRY;

import counterbench.db.Store;
import counterbench.facts.FactRow;
import counterbench.journal.Entry;
import counterbench.shared.Address;
import counterbench.shared.Site;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.ResultQuery;
import org.jspecify.annotations.Nullable;

/** Reads a journal for people to look at. */
public final class JournalBook {
    /** An entry with more facts is read kind by kind, so that memory does not grow with it. */
    private static final int MOST_SORTED = 10_000;

    private final Store store;

    public JournalBook(Store store) {
        this.store = store;
    }

    /**
     * An entry, and what has become of it.
     *
     * @param reversedBy the entry that took all of it back
     * @param reversedLines how many of its lines were taken back one by one
     */
    public record Listed(Entry entry, Optional<Long> reversedBy, int reversedLines) {}

    /**
     * One fact of an entry.
     *
     * @param booked the month in which it counts, if it counts in one
     * @param reversedBy the entry that took it back
     */
    public record Line(
            Address address, @Nullable YearMonth booked, FactRow row, Optional<Long> reversedBy) {}

    /** A site's newest entries, newest first. */
    public List<Listed> newest(Site site, int most) {
        return store.read(
                sql -> {
                    Reversals reversals = Reversals.of(sql, site.no());
                    return EntryReader.newest(sql, site.no(), most).stream()
                            .map(entry -> listed(entry, reversals))
                            .toList();
                });
    }

    /** A site's entry of that number. */
    public Optional<Listed> find(Site site, long number) {
        return store.read(
                sql ->
                        EntryReader.byNumber(sql, site.no(), number)
                                .map(entry -> listed(entry, Reversals.of(sql, site.no()))));
    }

    private static Listed listed(Entry entry, Reversals reversals) {
        return new Listed(
                entry, reversals.ofEntry(entry.number()), reversals.countOfLines(entry.number()));
    }

    /**
     * Some of the facts of an entry.
     *
     * @param first the first line of them, from 1
     * @param last the last line; it may lie behind the entry's end
     */
    public record Range(int first, int last) {
        /** All facts. */
        public static final Range ALL = new Range(1, Integer.MAX_VALUE);

        /** How many of an entry's facts it covers. */
        public int size(Entry entry) {
            return Math.max(0, Math.min(last, entry.factCount()) - first + 1);
        }
    }

    /** Gives facts of an entry by line; very many of them by kind, then line. */
    public void facts(Entry entry, Range range, Consumer<Line> lines) {
        store.read(
                sql -> {
                    if (range.size(entry) > MOST_SORTED) {
                        read(sql, entry, range, lines);
                    } else {
                        List<Line> all = new ArrayList<>();
                        read(sql, entry, range, all::add);
                        all.sort(Comparator.comparing(Line::address));
                        all.forEach(lines);
                    }
                    return true;
                });
    }

    private static void read(DSLContext sql, Entry entry, Range range, Consumer<Line> lines) {
        long batch = batchOf(sql, entry.siteNo(), entry.number());
        Reversals reversals = Reversals.of(sql, entry.siteNo());
        for (FactTable table : FactTable.values()) {
            var query = query(sql, table, entry, range, batch);
            try (var rows = query.fetchSize(1_000).fetchLazy()) {
                rows.forEach(record -> lines.accept(line(table, record, entry, reversals)));
            }
        }
    }

    static long batchOf(DSLContext sql, int siteNo, long number) {
        return Objects.requireNonNull(
                sql.select(ENTRY.BATCH)
                        .from(ENTRY)
                        .where(ENTRY.SITE_NO.eq((short) siteNo), ENTRY.NUMBER.eq(number))
                        .fetchOne(ENTRY.BATCH));
    }

    private static ResultQuery<? extends Record> query(
            DSLContext sql, FactTable table, Entry entry, Range range, long batch) {
        return sql.selectFrom(table.table())
                .where(
                        table.siteNo().eq((short) entry.siteNo()),
                        table.batch().eq(batch),
                        table.line().between(range.first(), range.last()))
                .orderBy(table.line());
    }

    private static Line line(FactTable table, Record record, Entry entry, Reversals reversals) {
        int line = record.get(table.line());
        return new Line(
                new Address(entry.number(), line),
                Verification.month(record.get(table.booked())),
                table.row(record),
                reversals.ofLine(entry.number(), line));
    }
}
