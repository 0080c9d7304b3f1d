package counterbench.acts.bench;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.facts.FactKind;
import counterbench.job.OnVehicle;
import counterbench.shared.Quantity;
import counterbench.stock.Use;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Takes a part off the vehicle again. One that was new is scrap from then on.
 *
 * @param was whether it had been fitted new or was refitted; null where the vehicle has only one
 *     kind of it
 * @param reason why, if it is said
 */
public record TakeOff(Hardware hardware, @Nullable Was was, @Nullable String reason, Stamp stamp)
        implements Act {
    /** How the part had come onto the vehicle. */
    public enum Was {
        NEW(Use.Condition.NEW, "new"),
        REUSED(Use.Condition.REUSED, "refitted old");

        private final Use.Condition condition;
        private final String words;

        Was(Use.Condition condition, String words) {
            this.condition = condition;
            this.words = words;
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
        Workplace place = hardware.workplace(situation, stamp, amount, "take off");
        OnVehicle on = place.job().onVehicle(stamp.at());
        Was meant = was == null ? only(place, on) : was;
        Quantity there = of(on, meant);
        if (there.isLessThan(amount)) {
            throw place.refused(
                    "the vehicle has "
                            + (there.isPositive() ? "only " + there : "none")
                            + " of it "
                            + meant.words,
                    "job show " + hardware.job() + " says what is on it");
        }
        return new Decision(
                List.of(
                        hardware.row(stamp, Use.Condition.TAKEN_OFF, amount)
                                .with("was", meant.condition.word())
                                .with("kit", hardware.kit())
                                .with("lot", hardware.lot())
                                .with("reason", reason)),
                List.of());
    }

    private Was only(Workplace place, OnVehicle on) {
        boolean fresh = of(on, Was.NEW).isPositive();
        boolean old = of(on, Was.REUSED).isPositive();
        if (fresh && old) {
            throw place.refused(
                    "the vehicle has "
                            + of(on, Was.NEW)
                            + " new and "
                            + of(on, Was.REUSED)
                            + " refitted old",
                    "say which with --was new or --was reused");
        }
        return old ? Was.REUSED : Was.NEW;
    }

    private Quantity of(OnVehicle on, Was kind) {
        return kind == Was.NEW ? on.fittedNew(hardware.part()) : on.refittedOld(hardware.part());
    }
}
