package counterbench.shell.claims;

import counterbench.acts.desk.ClaimDraft;
import counterbench.claims.Money;
import counterbench.claims.draft.Draft;
import counterbench.claims.draft.DraftLine;
import counterbench.shell.Invocation;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Prints of what each draft is made, line by line, down to its total. */
final class DraftLines {
    private DraftLines() {}

    static void print(Invocation in, List<ClaimDraft> drafts) {
        try (Rows rows =
                in.rows(
                        Column.text("job"),
                        Column.text("line"),
                        Column.text("what"),
                        Column.number("quantity"),
                        Column.number("unit_amount"),
                        Column.number("amount"))) {
            drafts.stream().map(ClaimDraft::draft).forEach(draft -> add(rows, draft));
        }
        drafts.stream()
                .filter(d -> !d.isReady())
                .map(d -> "job " + d.draft().job() + " held back: " + String.join("; ", d.held()))
                .forEach(in::tell);
    }

    private static void add(Rows rows, Draft draft) {
        for (DraftLine line : draft.lines()) {
            rows.add(
                    draft.job(),
                    line.kind().words(),
                    line.what(),
                    plain(line.quantity()),
                    Optional.ofNullable(line.unitAmount()).map(Money::text).orElse(null),
                    Money.text(line.amount()));
        }
        rows.add(draft.job(), "total", null, null, null, Money.text(draft.total()));
    }

    private static @Nullable String plain(@Nullable BigDecimal quantity) {
        return quantity == null ? null : quantity.stripTrailingZeros().toPlainString();
    }
}
