package counterbench.month.sheet;

import counterbench.claims.CreditFacts;
import counterbench.judgement.Finding;
import counterbench.review.JudgedComponent;
import counterbench.review.Settlement;
import counterbench.sheets.report.ReportRows;
import counterbench.stock.Count;
import counterbench.stock.LedgerFacts;
import java.util.Collection;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A monthly workbook in the making: give it each component after the findings about its jobs, and
 * at the end what belongs to none; then ask.
 */
public interface Book extends AutoCloseable {
    /**
     * Takes what the review found at the site, in whatever month.
     *
     * @param settled how it was settled; null where it is open
     * @param counts whether it counts in the month
     */
    void add(Finding finding, @Nullable Settlement settled, boolean counts);

    /** Takes a credit that belongs to no claim; all of them before the components. */
    default void addOfNoClaim(CreditFacts credit) {}

    /** Takes the jobs and kits of a component. */
    void add(JudgedComponent judged);

    /** Takes the facts of the loose store and the counts of loose parts. */
    void end(LedgerFacts storeOnly, Collection<Count> looseCounts);

    /** The rows of each sheet, by what the program calls it. */
    Map<String, ReportRows> rows();

    /** Removes what was held on the disk. */
    @Override
    void close();
}
