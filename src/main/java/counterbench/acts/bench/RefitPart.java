package counterbench.acts.bench;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.facts.FactKind;
import counterbench.shared.Quantity;
import counterbench.stock.Use;
import java.util.List;

/**
 * Fits an old part again. Nothing moves; the new part that it spares stays on the bench.
 *
 * @param reason why an old one went on
 */
public record RefitPart(Hardware hardware, String reason, Stamp stamp) implements Act {
    @Override
    public FactKind makes() {
        return FactKind.USES;
    }

    @Override
    public Named named() {
        return hardware.named();
    }

    @Override
    public Decision decide(Situation situation) {
        Quantity amount = hardware.amount(situation);
        hardware.workplace(situation, stamp, amount, "refit");
        return new Decision(
                List.of(hardware.row(stamp, Use.Condition.REUSED, amount).with("reason", reason)),
                List.of());
    }
}
