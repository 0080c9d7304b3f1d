package counterbench.campaign;

import counterbench.shared.Quantity;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** Builds lines of kits for tests. */
public final class LineDraft {
    private final String part;
    private final PartUnit unit;
    private final Quantity quantity;
    private Quantity atLeast;
    private boolean singleUse;
    private boolean matched;
    private boolean shelfLife;
    private boolean onCore;
    private List<String> replaces = List.of();
    private Condition when = Condition.ALWAYS;

    private LineDraft(String part, PartUnit unit, Quantity quantity) {
        this.part = part;
        this.unit = unit;
        this.quantity = quantity;
        this.atLeast = quantity;
    }

    public static LineDraft pieces(String part, long quantity) {
        return new LineDraft(part, PartUnit.EACH, Quantity.of(quantity));
    }

    public static LineDraft millilitres(String part, String quantity, String atLeast) {
        LineDraft line = new LineDraft(part, PartUnit.ML, Quantity.of(quantity));
        line.atLeast = Quantity.of(atLeast);
        return line;
    }

    public LineDraft singleUse() {
        singleUse = true;
        return this;
    }

    public LineDraft matched() {
        matched = true;
        return this;
    }

    public LineDraft shelfLife() {
        shelfLife = true;
        return this;
    }

    public LineDraft onCore() {
        onCore = true;
        return this;
    }

    public LineDraft replaces(String... older) {
        replaces = List.of(older);
        return this;
    }

    public LineDraft when(String attribute, String answer) {
        when = new Condition(Map.of(attribute, answer));
        return this;
    }

    public KitLine line() {
        return new KitLine(
                part,
                part,
                unit,
                quantity,
                atLeast,
                singleUse,
                matched,
                shelfLife,
                onCore,
                replaces,
                BigDecimal.ZERO,
                when);
    }
}
