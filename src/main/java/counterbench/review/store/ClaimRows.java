package counterbench.review.store;

import counterbench.claims.Claim;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.store.FactTable;
import counterbench.shared.Address;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jooq.Record;

/** Reads claims out of their rows, with the row that first says that one stands no more. */
record ClaimRows(FactReader reader, Visible visible) {
    private static final FactTable TABLE = FactTable.of(FactKind.CLAIMS);

    List<Claim> claims(List<? extends Record> rows) {
        return Keyed.merge(TABLE, rows, visible).stream()
                .flatMap(k -> reader.claim(k.address(), k.row()).stream())
                .map(claim -> claim.fallenBy(said(claim, rows).orElse(null)))
                .toList();
    }

    private Optional<Address> said(Claim claim, List<? extends Record> rows) {
        return claim.fallsOn()
                .flatMap(
                        day ->
                                rows.stream()
                                        .filter(record -> says(TABLE.row(record), claim, day))
                                        .flatMap(r -> visible.address(TABLE, r).stream())
                                        .min(Address::compareTo));
    }

    private static boolean says(FactRow row, Claim claim, LocalDate day) {
        return claim.claim().equals(row.text("claim"))
                && (day.equals(row.date("withdrawn_on")) || day.equals(row.date("denied_on")));
    }
}
