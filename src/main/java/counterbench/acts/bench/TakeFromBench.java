package counterbench.acts.bench;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Quantity;
import counterbench.stock.Use;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Takes a part from a job's bench: fits it new, puts it back, or scraps it. Every row says the kit
 * or the lot that it is from, so that nothing is left to be guessed.
 *
 * @param end what becomes of it
 * @param reason why, where there is one
 */
public record TakeFromBench(End end, Hardware hardware, @Nullable String reason, Stamp stamp)
        implements Act {
    /** What becomes of a part that is taken from the bench. */
    public enum End {
        FITTED("fit", Use.Condition.NEW),
        PUT_BACK("put back", Use.Condition.PUT_BACK),
        SCRAPPED("scrap", Use.Condition.SCRAPPED);

        private final String verb;
        private final Use.Condition condition;

        End(String verb, Use.Condition condition) {
            this.verb = verb;
            this.condition = condition;
        }

        Use.Condition condition() {
            return condition;
        }
    }

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
        Workplace place = hardware.workplace(situation, stamp, amount, end.verb);
        if (end == End.FITTED) {
            refusePlug(place);
        }
        List<BenchPick> picks = BenchPick.of(place, hardware, amount);
        return new Decision(
                picks.stream().map(this::row).toList(),
                end == End.FITTED
                        ? new LooseForKit(place, hardware.part()).remarks(picks)
                        : List.of());
    }

    private void refusePlug(Workplace place) {
        boolean onCore =
                place.job()
                        .requirements()
                        .flatMap(requirements -> requirements.of(hardware.part()))
                        .filter(requirement -> !requirement.onVehicle())
                        .isPresent();
        if (onCore) {
            throw place.refused("it goes on the core, not on the vehicle", "say plug TAG instead");
        }
    }

    private FactRow row(BenchPick pick) {
        return hardware.row(stamp, end.condition(), pick.quantity())
                .with("kit", pick.kit())
                .with("lot", pick.lot())
                .with("reason", reason);
    }
}
