package counterbench.shell.rack;

import counterbench.acts.rack.Exposure;
import counterbench.shared.Site;
import counterbench.shell.Invocation;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.math.BigDecimal;
import java.util.List;

/** Writes what is owed for cores, by campaign and age. */
final class ChargeRows {
    private ChargeRows() {}

    static void write(Invocation in, Site site, List<Exposure> exposures) {
        try (Rows rows =
                in.rows(
                        Column.text("campaign"),
                        Column.text("age"),
                        Column.number("cores"),
                        Column.number("never_removed"),
                        Column.number("charge"),
                        Column.text("currency"))) {
            for (Exposure owed : exposures) {
                rows.add(
                        owed.campaign(),
                        owed.age().words(),
                        owed.cores(),
                        owed.missing(),
                        owed.charge(),
                        site.currency().getCurrencyCode());
            }
        }
        BigDecimal all =
                exposures.stream().map(Exposure::charge).reduce(BigDecimal.ZERO, BigDecimal::add);
        in.tell(RackRows.money(all, site) + " owed for cores that are not accepted yet");
    }
}
