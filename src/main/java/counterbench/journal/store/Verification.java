package counterbench.journal.store;

import static counterbench.db.generated.Tables.ENTRY;
import static counterbench.db.generated.Tables.REVERSALS_FACT;

import counterbench.journal.Chain;
import counterbench.journal.ContentHash;
import counterbench.journal.Entry;
import counterbench.journal.Sha256;
import counterbench.shared.Site;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;

/**
 * Computes a site's journal again from what the store holds, and names the first entry that does
 * not hold.
 */
public final class Verification {
    private final DSLContext sql;
    private final Site site;
    private final Sha256 sha = new Sha256();
    private final Map<Long, ContentHash> byBatch = new HashMap<>();

    /**
     * An entry that does not hold.
     *
     * @param number its number
     * @param why what is wrong with it
     */
    public record Broken(long number, String why) {}

    /**
     * What the verification saw.
     *
     * @param entries how many entries hold, from the first
     * @param facts how many facts they bear
     * @param lastHash the hash of the last entry that holds
     * @param broken the first that does not, if one does not
     */
    public record Outcome(long entries, long facts, String lastHash, Optional<Broken> broken) {
        /** The sentence for a journal in which nothing is broken. */
        public String holds() {
            return entries == 1 ? "its only entry holds" : "all " + entries + " entries hold";
        }
    }

    private Verification(DSLContext sql, Site site) {
        this.sql = sql;
        this.site = site;
    }

    /** Verifies a site's journal. Reads every fact of the site once. */
    public static Outcome of(DSLContext sql, Site site) {
        Verification verification = new Verification(sql, site);
        FactTable.values().forEach(verification::scan);
        return verification.walk();
    }

    private void scan(FactTable table) {
        try (var rows =
                sql.selectFrom(table.table())
                        .where(table.siteNo().eq((short) site.no()))
                        .fetchSize(1_000)
                        .fetchLazy()) {
            for (Record record : rows) {
                byBatch.computeIfAbsent(record.get(table.batch()), b -> new ContentHash(sha))
                        .add(
                                record.get(table.line()),
                                month(record.get(table.booked())),
                                table.row(record));
            }
        }
    }

    static @Nullable YearMonth month(@Nullable Integer number) {
        return number == null ? null : YearMonth.of(number / 100, number % 100);
    }

    private Outcome walk() {
        Map<Long, String> reversals = badReversals();
        String previous = Chain.START;
        long expected = 1;
        long facts = 0;
        try (var entries =
                sql.selectFrom(ENTRY)
                        .where(ENTRY.SITE_NO.eq((short) site.no()))
                        .orderBy(ENTRY.NUMBER)
                        .fetchSize(1_000)
                        .fetchLazy()) {
            for (var record : entries) {
                Entry entry = EntryReader.entry(record);
                Optional<String> why = problem(entry, record.getBatch(), expected, previous);
                why = why.or(() -> Optional.ofNullable(reversals.get(entry.number())));
                if (why.isPresent()) {
                    long number = Math.min(expected, entry.number());
                    return new Outcome(
                            expected - 1,
                            facts,
                            previous,
                            Optional.of(new Broken(number, why.get())));
                }
                previous = entry.hash();
                facts += entry.factCount();
                expected++;
            }
        }
        return new Outcome(expected - 1, facts, previous, headProblem(expected - 1, previous));
    }

    private Optional<String> problem(Entry entry, long batch, long expected, String previous) {
        if (entry.number() != expected) {
            return Optional.of("entry " + expected + " is missing");
        }
        ContentHash content = byBatch.getOrDefault(batch, new ContentHash(sha));
        if (content.count() != entry.factCount()) {
            return Optional.of(
                    "it was written with "
                            + entry.factCount()
                            + " facts and has "
                            + content.count());
        }
        if (!content.hex().equals(entry.contentHash())) {
            return Optional.of("one of its facts was changed after it was written");
        }
        return linked(entry, previous).hash().equals(entry.hash())
                ? Optional.empty()
                : Optional.of("its hash does not follow from the entry before it");
    }

    private Entry linked(Entry entry, String previous) {
        return Chain.link(
                previous,
                site.no(),
                site.site(),
                entry.number(),
                entry.id(),
                entry.recordedAt(),
                entry.person(),
                entry.kind(),
                entry.source(),
                entry.reverses(),
                entry.factCount(),
                entry.contentHash());
    }

    private Optional<Broken> headProblem(long number, String hash) {
        JooqJournal.Head head = JooqJournal.Head.read(sql, site.no());
        boolean holds = head.number() == number && head.hash().equals(hash);
        return holds
                ? Optional.empty()
                : Optional.of(
                        new Broken(
                                number + 1,
                                "the journal should end with entry "
                                        + head.number()
                                        + " and does not"));
    }

    /**
     * Reversals of entries that do not come before them, or of lines that are not there, by their
     * own entry.
     */
    private Map<Long, String> badReversals() {
        Posted posted = Posted.of(sql, site.no());
        Map<Long, Integer> factCounts = new TreeMap<>();
        sql.select(ENTRY.NUMBER, ENTRY.FACT_COUNT)
                .from(ENTRY)
                .where(ENTRY.SITE_NO.eq((short) site.no()))
                .forEach(r -> factCounts.put(r.value1(), r.value2()));
        Map<Long, String> bad = new HashMap<>();
        sql.select(REVERSALS_FACT.BATCH, REVERSALS_FACT.ENTRY, REVERSALS_FACT.ENTRY_LINE)
                .from(REVERSALS_FACT)
                .where(REVERSALS_FACT.SITE_NO.eq((short) site.no()))
                .forEach(
                        r -> {
                            long number = posted.numberOf(r.value1());
                            int lines = factCounts.getOrDefault(r.value2(), 0);
                            long line = r.value3() == null ? 0 : r.value3();
                            if (number != 0 && (r.value2() >= number || line > lines)) {
                                bad.put(
                                        number,
                                        "it reverses " + r.value2() + ", which is not there");
                            }
                        });
        return bad;
    }
}
