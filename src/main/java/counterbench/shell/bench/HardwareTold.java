package counterbench.shell.bench;

import counterbench.acts.Parts;
import counterbench.acts.bench.FitState;
import counterbench.acts.store.RecordAct;
import counterbench.facts.FactRow;
import counterbench.shared.Quantity;
import java.math.BigDecimal;
import java.util.Objects;

/** How the bench names the hardware that was recorded. */
final class HardwareTold {
    private HardwareTold() {}

    /** The part of the facts with its quantity over all sources: {@code 2 HB-3013}. */
    static String goods(RecordAct.Recorded recorded) {
        Quantity sum = Quantity.ZERO;
        for (FactRow row : recorded.facts()) {
            BigDecimal amount = Objects.requireNonNull(row.decimal("quantity"));
            sum = sum.plus(new Quantity(amount));
        }
        return Parts.of(recorded.after()).words(part(recorded), sum);
    }

    /** What is on the vehicle of that part and what it needs: {@code , 2 of 4 on the vehicle}. */
    static String onVehicle(RecordAct.Recorded recorded) {
        return FitState.told(
                recorded.after().job(job(recorded)), recorded.after().now(), part(recorded));
    }

    static String job(RecordAct.Recorded recorded) {
        return Objects.requireNonNull(recorded.facts().get(0).text("job"));
    }

    private static String part(RecordAct.Recorded recorded) {
        return Objects.requireNonNull(recorded.facts().get(0).text("part"));
    }
}
