package counterbench.month.store;

import counterbench.facts.FactKind;
import counterbench.journal.store.FactTable;
import counterbench.shared.Site;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/** The first month in which anything is booked at a site. */
final class FirstMonth {
    private static final List<FactKind> BOOKED =
            List.of(
                    FactKind.KITS,
                    FactKind.RECEIPTS,
                    FactKind.ISSUES,
                    FactKind.USES,
                    FactKind.MARKS,
                    FactKind.CORES,
                    FactKind.MOVES,
                    FactKind.CLAIMS);

    private FirstMonth() {}

    static Optional<YearMonth> of(DSLContext sql, Site site) {
        return BOOKED.stream()
                .flatMap(kind -> first(sql, site, FactTable.of(kind)))
                .min(YearMonth::compareTo);
    }

    private static Stream<YearMonth> first(DSLContext sql, Site site, FactTable table) {
        Integer booked =
                sql.select(DSL.min(table.booked()))
                        .from(table.table())
                        .where(table.siteNo().eq((short) site.no()))
                        .fetchOne(DSL.min(table.booked()));
        return booked == null
                ? Stream.empty()
                : Stream.of(YearMonth.of(booked / 100, booked % 100));
    }
}
