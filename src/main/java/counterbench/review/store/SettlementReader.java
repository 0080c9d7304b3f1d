package counterbench.review.store;

import static counterbench.db.generated.Tables.ENTRY;

import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.store.FactTable;
import counterbench.journal.store.Posted;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.review.FindingId;
import counterbench.review.Settlement;
import counterbench.shared.Address;
import counterbench.shared.Site;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jooq.DSLContext;
import org.jooq.Record;

/** Reads what was settled at a site. */
final class SettlementReader {
    private static final FactTable TABLE = FactTable.of(FactKind.SETTLEMENTS);

    private SettlementReader() {}

    /**
     * Every settlement, those taken back marked so, in the order of the journal.
     *
     * @param known the entry that was the newest
     */
    static List<Settlement> all(DSLContext sql, Site site, long known) {
        Posted posted = Posted.upTo(sql, site.no(), known);
        return sql.select(TABLE.table().fields())
                .select(ENTRY.NUMBER, ENTRY.PERSON)
                .from(TABLE.table())
                .join(ENTRY)
                .on(ENTRY.BATCH.eq(TABLE.batch()))
                .where(TABLE.siteNo().eq((short) site.no()), ENTRY.NUMBER.le(known))
                .orderBy(ENTRY.NUMBER, TABLE.line())
                .fetch(record -> settlement(site, posted, record));
    }

    private static Settlement settlement(Site site, Posted posted, Record record) {
        FactRow row = TABLE.row(record);
        Address address =
                new Address(
                        Objects.requireNonNull(record.get(ENTRY.NUMBER)),
                        Objects.requireNonNull(record.get(TABLE.line())));
        Subject subject =
                new Subject(
                        SubjectKind.valueOf(said(row, "subject_kind").toUpperCase(Locale.ROOT)),
                        said(row, "subject"),
                        row.text("part"),
                        row.text("step"));
        return new Settlement(
                address,
                FindingId.of(site.site(), said(row, "rule"), subject),
                Objects.requireNonNull(row.time("at")),
                Objects.requireNonNull(record.get(ENTRY.PERSON)),
                said(row, "reason"),
                said(row, "evidence_hash"),
                said(row, "evidence"),
                posted.isReversed(address.entry(), address.line()));
    }

    private static String said(FactRow row, String heading) {
        return Objects.requireNonNull(row.text(heading), heading);
    }
}
