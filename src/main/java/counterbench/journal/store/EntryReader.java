package counterbench.journal.store;

import static counterbench.db.generated.Tables.ENTRY;

import counterbench.db.generated.tables.records.EntryRecord;
import counterbench.journal.Entry;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;

/** Reads entries. */
public final class EntryReader {
    private EntryReader() {}

    /** The latest time at which anything was recorded at a site, whichever entry bears it. */
    public static Optional<Instant> latestRecording(DSLContext sql, int siteNo) {
        return sql.select(ENTRY.RECORDED_AT)
                .from(ENTRY)
                .where(ENTRY.SITE_NO.eq((short) siteNo))
                .orderBy(ENTRY.SITE_NO.desc(), ENTRY.RECORDED_AT.desc())
                .limit(1)
                .fetchOptional(ENTRY.RECORDED_AT);
    }

    /** The entry that a client made under that identifier. */
    public static Optional<Entry> byId(DSLContext sql, UUID id) {
        return sql.selectFrom(ENTRY).where(ENTRY.ID.eq(id)).fetchOptional(EntryReader::entry);
    }

    /** A site's entry of that number. */
    public static Optional<Entry> byNumber(DSLContext sql, int siteNo, long number) {
        return sql.selectFrom(ENTRY)
                .where(ENTRY.SITE_NO.eq((short) siteNo), ENTRY.NUMBER.eq(number))
                .fetchOptional(EntryReader::entry);
    }

    /** A site's newest entries, newest first. */
    public static List<Entry> newest(DSLContext sql, int siteNo, int most) {
        return sql.selectFrom(ENTRY)
                .where(ENTRY.SITE_NO.eq((short) siteNo))
                .orderBy(ENTRY.NUMBER.desc())
                .limit(most)
                .fetch(EntryReader::entry);
    }

    static Entry entry(EntryRecord r) {
        return new Entry(
                r.getSiteNo(),
                r.getNumber(),
                r.getId(),
                r.getRecordedAt(),
                r.getPerson(),
                r.getKind(),
                r.getSource(),
                r.getReverses(),
                r.getFactCount(),
                r.getContentHash(),
                r.getHash());
    }
}
