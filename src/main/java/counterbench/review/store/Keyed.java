package counterbench.review.store;

import counterbench.facts.Canonical;
import counterbench.facts.FactRow;
import counterbench.intake.KeyedMerge;
import counterbench.journal.store.FactTable;
import counterbench.shared.Address;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.Record;

/**
 * What the rows of one key say together.
 *
 * @param address the first row's
 * @param last the last row's
 */
record Keyed(Address address, Address last, FactRow row) {
    /** The rows that count, put together by key, in the order of each key's first row. */
    static List<Keyed> merge(FactTable table, List<? extends Record> rows, Visible visible) {
        Map<String, Keyed> byKey = new LinkedHashMap<>();
        for (Record record : rows) {
            Optional<Address> address = visible.address(table, record);
            if (address.isPresent()) {
                FactRow row = table.row(record);
                byKey.merge(
                        Canonical.key(row),
                        new Keyed(address.get(), address.get(), row),
                        Keyed::with);
            }
        }
        return new ArrayList<>(byKey.values());
    }

    private Keyed with(Keyed other) {
        FactRow merged = KeyedMerge.together(List.of(row, other.row)).orElse(row);
        return new Keyed(
                address.compareTo(other.address) <= 0 ? address : other.address,
                last.compareTo(other.last) >= 0 ? last : other.last,
                merged);
    }
}
