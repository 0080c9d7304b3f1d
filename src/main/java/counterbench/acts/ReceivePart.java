package counterbench.acts;

import counterbench.facts.FactKind;
import counterbench.shared.Quantity;
import counterbench.shared.Refused;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Takes loose parts from the supplier into the store. */
public record ReceivePart(String part, Quantity quantity, Delivery delivery, Stamp stamp)
        implements Act {
    /**
     * What the paper says besides.
     *
     * @param expiresOn the last usable day of the lot
     * @param unitCost what one piece, mL or g cost, in the site's currency
     */
    public record Delivery(
            @Nullable String lot,
            @Nullable LocalDate expiresOn,
            @Nullable BigDecimal unitCost,
            @Nullable String document) {}

    @Override
    public FactKind makes() {
        return FactKind.RECEIPTS;
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
        if (delivery.unitCost() != null && delivery.unitCost().signum() < 0) {
            throw new Refused(
                    "cost \"" + delivery.unitCost() + "\"",
                    "it is below zero",
                    "say what one cost");
        }
        if (delivery.expiresOn() != null && delivery.lot() == null) {
            throw new Refused(
                    "expires \"" + delivery.expiresOn() + "\"",
                    "a last usable day belongs to a lot",
                    "say the lot, too, with --lot");
        }
        boolean priced = delivery.unitCost() != null;
        return new Decision(
                List.of(
                        stamp.row(FactKind.RECEIPTS)
                                .with("part", part)
                                .with("quantity", quantity.amount())
                                .with("lot", delivery.lot())
                                .with("expires_on", delivery.expiresOn())
                                .with("unit_cost", delivery.unitCost())
                                .with(
                                        "currency",
                                        priced
                                                ? situation.site().currency().getCurrencyCode()
                                                : null)
                                .with("document", delivery.document())),
                remarks(situation));
    }

    private List<String> remarks(Situation situation) {
        LocalDate until = delivery.expiresOn();
        boolean expired = until != null && situation.site().dayOf(stamp.at()).isAfter(until);
        return expired ? List.of("expired: its last usable day was " + until) : List.of();
    }
}
