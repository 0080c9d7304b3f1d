package counterbench.month.sheet;

import counterbench.claims.CreditFacts;
import counterbench.judgement.Finding;
import counterbench.review.Component;
import counterbench.review.Settlements;
import counterbench.sheets.report.ReportRows;
import counterbench.stock.Count;
import counterbench.stock.LedgerFacts;
import java.util.Collection;
import java.util.Map;
import java.util.function.Predicate;

/**
 * A monthly workbook in the making: give it the findings first, then every component, then what
 * belongs to none; then ask.
 */
public interface Book extends AutoCloseable {
    /**
     * Takes what the review found at the site, in whatever month, and what is settled.
     *
     * @param counts whether a finding counts in the month
     */
    void add(Collection<Finding> found, Settlements settlements, Predicate<Finding> counts);

    /** Takes a credit that belongs to no claim; all of them before the components. */
    default void addOfNoClaim(CreditFacts credit) {}

    /** Takes the jobs and kits of a component. */
    void add(Component component);

    /** Takes the facts of the loose store and the counts of loose parts. */
    void end(LedgerFacts storeOnly, Collection<Count> looseCounts);

    /** The rows of each sheet, by what the program calls it. */
    Map<String, ReportRows> rows();

    /** Removes what was held on the disk. */
    @Override
    void close();
}
