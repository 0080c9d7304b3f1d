package counterbench.intake.store;

import static counterbench.db.generated.Tables.CLAIMS_FACT;

import counterbench.facts.FactKind;
import counterbench.intake.ClaimNames;
import counterbench.journal.store.AllPosted;
import counterbench.journal.store.FactTable;
import counterbench.journal.store.JobRange;
import counterbench.shared.Site;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jooq.Condition;
import org.jooq.DSLContext;

/** Claims that a site has, and those that the import has brought so far. */
final class StoredClaims implements ClaimNames {
    private final DSLContext sql;
    private final Site site;
    private final AllPosted posted;
    private final Map<String, Boolean> ofImport;

    /**
     * @param ofImport where it remembers those of the import
     */
    StoredClaims(DSLContext sql, Site site, AllPosted posted, Map<String, Boolean> ofImport) {
        this.sql = sql;
        this.site = site;
        this.posted = posted;
        this.ofImport = ofImport;
    }

    void bring(String claim) {
        ofImport.put(claim, true);
    }

    @Override
    public boolean isClaim(String claim) {
        return ofImport.containsKey(claim)
                || !where(
                                CLAIMS_FACT
                                        .SITE_NO
                                        .eq((short) site.no())
                                        .and(CLAIMS_FACT.CLAIM.eq(claim)))
                        .isEmpty();
    }

    @Override
    public Set<String> ofJob(String job) {
        return JobRange.find(sql, site.no(), job)
                .map(range -> where(range.contains(FactTable.of(FactKind.CLAIMS))))
                .orElseGet(TreeSet::new);
    }

    private Set<String> where(Condition which) {
        Set<String> claims = new TreeSet<>();
        sql.select(CLAIMS_FACT.BATCH, CLAIMS_FACT.LINE, CLAIMS_FACT.CLAIM)
                .from(CLAIMS_FACT)
                .where(which)
                .forEach(
                        r -> {
                            if (posted.counts(site.no(), r.value1(), r.value2())) {
                                claims.add(r.value3());
                            }
                        });
        return claims;
    }
}
