package counterbench.acts;

import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Quantity;
import counterbench.stock.StockEvent;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Takes loose parts out of the store: to another site, back to the supplier, or into the scrap.
 *
 * @param lot the lot; null for the one that expires first
 */
public record MovePart(
        String part, Quantity quantity, @Nullable String lot, Leaving leaving, Stamp stamp)
        implements Act {
    @Override
    public FactKind makes() {
        return FactKind.MOVES;
    }

    @Override
    public Named named() {
        return Named.NOTHING.withPart(part);
    }

    @Override
    public Decision decide(Situation situation) {
        Parts parts = Parts.of(situation);
        parts.mustBeLoose(part);
        parts.mustBeSome(part, quantity);
        leaving.mustHaveDestination(situation);
        String asked = parts.words(part, quantity) + " " + leaving.words();
        ShelfPick.Wish wish =
                new ShelfPick.Wish(asked, situation.shelf(part), quantity, lot, stamp.at());
        List<ShelfPick> picks =
                leaving.kind() == StockEvent.Kind.SENT
                        ? ShelfPick.forUse(situation, wish)
                        : ShelfPick.forLeaving(situation, wish);
        return new Decision(picks.stream().map(this::row).toList(), remarks(picks));
    }

    private FactRow row(ShelfPick pick) {
        return leaving.row(stamp)
                .with("part", part)
                .with("quantity", pick.quantity().amount())
                .with("lot", pick.lot());
    }

    private List<String> remarks(List<ShelfPick> picks) {
        boolean chosen = lot == null && picks.stream().anyMatch(pick -> pick.lot() != null);
        return chosen ? picks.stream().map(pick -> "take " + pick.words()).toList() : List.of();
    }
}
