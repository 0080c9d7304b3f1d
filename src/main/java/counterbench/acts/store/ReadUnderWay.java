package counterbench.acts.store;

import static counterbench.db.generated.Tables.MOVES_FACT;
import static counterbench.db.generated.Tables.SITE;

import counterbench.acts.UnderWay;
import counterbench.acts.UnderWay.Sending;
import counterbench.journal.store.AllPosted;
import counterbench.shared.Quantity;
import counterbench.shared.Site;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;

/** Reads what is on its way to a site. */
final class ReadUnderWay {
    private final DSLContext sql;
    private final AllPosted posted;
    private final Instant now;
    private final Map<Short, String> sites = new HashMap<>();

    private ReadUnderWay(DSLContext sql, Instant now) {
        this.sql = sql;
        this.posted = new AllPosted(sql);
        this.now = now;
        sql.select(SITE.SITE_NO, SITE.SITE_)
                .from(SITE)
                .forEach(r -> sites.put(r.value1(), r.value2()));
    }

    static UnderWay to(DSLContext sql, Site site, Instant now) {
        ReadUnderWay reading = new ReadUnderWay(sql, now);
        Condition fromHere = MOVES_FACT.SITE_NO.eq((short) site.no());
        List<Sending> sent =
                reading.rows("sent", MOVES_FACT.OTHER_SITE.eq(site.site()).andNot(fromHere));
        return UnderWay.of(sent, reading.rows("arrived", fromHere));
    }

    /** Rows of whole kits and of loose parts. */
    private List<Sending> rows(String event, Condition where) {
        List<Sending> rows = new ArrayList<>();
        sql.selectFrom(MOVES_FACT)
                .where(MOVES_FACT.EVENT.eq(event).and(where))
                .orderBy(MOVES_FACT.BATCH, MOVES_FACT.LINE)
                .forEach(
                        r -> {
                            boolean whole = r.getKit() == null || r.getPart() == null;
                            boolean counts =
                                    posted.counts(r.getSiteNo(), r.getBatch(), r.getLine());
                            if (whole && counts && !r.getAt().isAfter(now)) {
                                rows.add(sending(event, r));
                            }
                        });
        return rows;
    }

    private Sending sending(String event, Record row) {
        @Nullable String said = row.get(MOVES_FACT.OTHER_SITE);
        String sender = sites.getOrDefault(row.get(MOVES_FACT.SITE_NO), "?");
        @Nullable String kit = row.get(MOVES_FACT.KIT);
        @Nullable BigDecimal amount = row.get(MOVES_FACT.QUANTITY);
        return new Sending(
                event.equals("sent") ? sender : Objects.requireNonNullElse(said, "?"),
                row.get(MOVES_FACT.AT),
                kit,
                row.get(MOVES_FACT.PART),
                kit != null || amount == null ? Quantity.ONE : new Quantity(amount),
                row.get(MOVES_FACT.LOT));
    }
}
