package counterbench.acts;

import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Quantity;
import counterbench.shared.Refused;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Takes in loose parts that another site sent.
 *
 * @param lot the lot; null for those that were sent, the oldest sending first
 */
public record ArrivePart(
        String part,
        Quantity quantity,
        @Nullable String lot,
        String from,
        @Nullable String document,
        Stamp stamp)
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
        Leaving.mustBeOther(situation, from);
        List<FactRow> rows = new ArrayList<>();
        Quantity rest = quantity;
        for (UnderWay.Sending sending : situation.directory().underWay().ofPart(part)) {
            if (isMeant(sending) && rest.isPositive()) {
                Quantity arrived = sending.quantity().min(rest);
                rows.add(row(sending, arrived));
                rest = rest.minus(arrived);
            }
        }
        if (rest.isPositive()) {
            throw notSent(parts.words(part, quantity), quantity.minus(rest));
        }
        return new Decision(rows, List.of());
    }

    private boolean isMeant(UnderWay.Sending sending) {
        return sending.otherSite().equals(from)
                && !sending.at().isAfter(stamp.at())
                && (lot == null || lot.equals(sending.lot()));
    }

    private FactRow row(UnderWay.Sending sending, Quantity arrived) {
        return stamp.row(FactKind.MOVES)
                .with("event", "arrived")
                .with("part", part)
                .with("quantity", arrived.amount())
                .with("lot", sending.lot())
                .with("other_site", from)
                .with("document", document);
    }

    private Refused notSent(String what, Quantity underWay) {
        return new Refused(
                what + " from site " + from,
                "only "
                        + underWay
                        + (lot == null ? "" : " of lot " + lot)
                        + " of it was sent here and has not arrived",
                "have the sending recorded there first (part send); if it came from the supplier,"
                        + " say part receive");
    }
}
