package counterbench.month.sheet;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import counterbench.spool.SpooledRows;
import counterbench.stock.Count;
import counterbench.stock.CountDifference;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What was counted in the month, against the book at that time. */
final class CountsSheet {
    private final SiteMonth period;
    private final PartNames names;
    private final SpooledRows rows;

    CountsSheet(SiteMonth period, PartNames names, SpooledRows rows) {
        this.period = period;
        this.names = names;
        this.rows = rows;
    }

    /**
     * Adds those of the counts that belong to the month.
     *
     * @param differences where they differ from the book
     */
    void add(Collection<Count> counts, Collection<CountDifference> differences) {
        List<Count> ofMonth =
                counts.stream().filter(c -> period.books(c.countedAt(), c.address())).toList();
        if (!ofMonth.isEmpty()) {
            Map<Address, CountDifference> byFact =
                    differences.stream()
                            .collect(Collectors.toMap(CountDifference::fact, Function.identity()));
            ofMonth.forEach(count -> add(count, byFact.get(count.address())));
        }
    }

    private void add(Count count, @Nullable CountDifference difference) {
        rows.add(
                List.of(count.countedAt(), count.address().entry(), count.address().line()),
                new RowOf()
                        .with("counted_at", count.countedAt())
                        .part(count.part(), names)
                        .with("kit", count.kit())
                        .with("counted", count.quantity())
                        .with("book", difference == null ? count.quantity() : difference.book())
                        .with(
                                "difference",
                                difference == null ? Quantity.ZERO : difference.difference())
                        .with("by", count.by())
                        .values());
    }
}
