package counterbench.review.store;

import static counterbench.db.generated.Tables.MATCHES_FACT;

import counterbench.claims.Credit;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.store.FactTable;
import counterbench.review.Horizon;
import counterbench.shared.Site;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jooq.DSLContext;

/**
 * Which claims lines of remittances were matched to, whatever they name themselves. Shares that do
 * not come to what a line says were made of another one, which was taken back, and hold no more.
 */
final class CreditMatches {
    private final Map<String, List<Share>> shares = new HashMap<>();

    private CreditMatches() {}

    private record Share(String claim, BigDecimal amount) {}

    static CreditMatches read(DSLContext sql, Site site, Visible visible, Horizon horizon) {
        FactTable table = FactTable.of(FactKind.MATCHES);
        CreditMatches matches = new CreditMatches();
        sql
                .selectFrom(MATCHES_FACT)
                .where(MATCHES_FACT.SITE_NO.eq((short) site.no()))
                .orderBy(MATCHES_FACT.BATCH, MATCHES_FACT.LINE)
                .fetch()
                .stream()
                .filter(r -> visible.address(table, r).isPresent())
                .map(table::row)
                .filter(row -> horizon.reaches(Objects.requireNonNull(row.time("at"))))
                .forEach(matches::add);
        return matches;
    }

    private void add(FactRow row) {
        String credit =
                Credit.nameOf(
                        Objects.requireNonNull(row.text("remittance")),
                        Objects.requireNonNull(row.text("line")));
        shares.computeIfAbsent(credit, c -> new ArrayList<>())
                .add(
                        new Share(
                                Objects.requireNonNull(row.text("claim")),
                                Objects.requireNonNull(row.decimal("amount"))));
    }

    boolean isMatched(Credit credit) {
        List<Share> of = shares.getOrDefault(credit.name(), List.of());
        BigDecimal sum = of.stream().map(Share::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
        return !of.isEmpty() && sum.compareTo(credit.amount()) == 0;
    }

    /** What of a credit goes to some claims. */
    List<Credit> shares(Credit credit, Set<String> claims) {
        if (!isMatched(credit)) {
            return List.of();
        }
        return shares.getOrDefault(credit.name(), List.of()).stream()
                .filter(share -> claims.contains(share.claim()))
                .map(share -> credit.matchedTo(share.claim(), share.amount()))
                .toList();
    }
}
