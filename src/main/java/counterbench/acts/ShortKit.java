package counterbench.acts;

import counterbench.facts.FactKind;
import counterbench.shared.NearMatch;
import counterbench.shared.Quantity;
import counterbench.shared.Refused;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Says that a kit turned out to come without something. */
public record ShortKit(
        String kit, String part, Quantity quantity, @Nullable String reason, Stamp stamp)
        implements Act {
    @Override
    public FactKind makes() {
        return FactKind.MOVES;
    }

    @Override
    public Named named() {
        return Named.NOTHING.withKit(kit);
    }

    @Override
    public Decision decide(Situation situation) {
        KitState state = situation.kit(kit);
        Set<String> contents = state.received().contents().keySet();
        if (!contents.contains(part)) {
            throw new Refused(
                    "part \"" + part + "\" of kit " + kit,
                    "the kit came without any such part",
                    NearMatch.of(part, contents)
                            .map(near -> "did you mean " + near + "?")
                            .orElse("it came with " + String.join(", ", contents)));
        }
        Parts.of(situation).mustBeSome(part, quantity);
        refuseUnlessThere(state);
        return Decision.of(
                stamp.row(FactKind.MOVES)
                        .with("event", "short")
                        .with("kit", kit)
                        .with("part", part)
                        .with("quantity", quantity.amount())
                        .with("reason", reason));
    }

    private void refuseUnlessThere(KitState state) {
        Quantity lying = state.lying(part, stamp.at());
        if (lying.isLessThan(quantity)) {
            throw new Refused(
                    "kit " + kit + " short of " + quantity + " " + part,
                    "by the book only "
                            + lying
                            + " of it can be missing; the rest was used or has left",
                    "look at kit show "
                            + kit
                            + "; if a fitting was written down that was none, reverse that first");
        }
    }
}
