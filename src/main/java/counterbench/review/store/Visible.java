package counterbench.review.store;

import counterbench.journal.store.AllPosted;
import counterbench.journal.store.FactTable;
import counterbench.shared.Address;
import java.util.Optional;
import org.jooq.Record;

/** Which rows count for a review, and where in the journal they stand. */
record Visible(AllPosted posted) {
    /** The address of a row's fact, if it counts. */
    Optional<Address> address(FactTable table, Record row) {
        int siteNo = table.siteNo(row);
        long batch = table.batch(row);
        int line = table.line(row);
        return posted.counts(siteNo, batch, line)
                ? Optional.of(new Address(posted.at(siteNo).numberOf(batch), line))
                : Optional.empty();
    }
}
