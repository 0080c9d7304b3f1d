package counterbench.acts.store;

import counterbench.facts.FactRow;
import counterbench.journal.Booking;
import counterbench.journal.SealedMonths;
import counterbench.journal.store.SealReader;
import counterbench.shared.Site;
import java.util.Collection;
import java.util.List;
import org.jooq.DSLContext;

/** Says where facts are booked that happened in a sealed month. */
final class LateBooking {
    private LateBooking() {}

    static List<String> words(DSLContext sql, Site site, Collection<FactRow> rows) {
        SealedMonths sealed = SealReader.of(sql, site.no());
        return rows.stream()
                .flatMap(row -> Booking.happenedIn(site, row).stream())
                .filter(month -> sealed.of(month).isPresent())
                .distinct()
                .map(
                        month ->
                                month
                                        + " is sealed: what happened in it is booked in "
                                        + sealed.firstOpen(month))
                .toList();
    }
}
