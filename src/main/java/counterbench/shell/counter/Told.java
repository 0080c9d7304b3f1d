package counterbench.shell.counter;

import counterbench.acts.Parts;
import counterbench.acts.store.RecordAct;
import counterbench.facts.FactRow;
import counterbench.shared.Quantity;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

/** How the commands of the parts counter name what was recorded. */
final class Told {
    private Told() {}

    /** The kits of the facts: {@code kit FP-1012}, {@code 2 kits FP-1012 and FP-1013}. */
    static String kits(RecordAct.Recorded recorded) {
        List<String> kits =
                recorded.facts().stream()
                        .map(row -> Objects.requireNonNull(row.text("kit")))
                        .toList();
        return kits.size() == 1
                ? "kit " + kits.get(0)
                : kits.size() + " kits, " + String.join(", ", kits) + ",";
    }

    /** The loose part of the facts with its quantity over all lots. */
    static String part(RecordAct.Recorded recorded) {
        String part = Objects.requireNonNull(recorded.facts().get(0).text("part"));
        Quantity sum = Quantity.ZERO;
        for (FactRow row : recorded.facts()) {
            BigDecimal amount = Objects.requireNonNull(row.decimal("quantity"));
            sum = sum.plus(new Quantity(amount));
        }
        return Parts.of(recorded.after()).words(part, sum);
    }
}
