package counterbench.stock.worth;

import counterbench.shared.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A month of one part in the store, in pieces and in money: opening and what came in make what went
 * out and the closing. What jobs put back counts as never gone out.
 */
public record PartWorth(String part, Worth opening, Worth in, Worth out, Worth closing) {

    /**
     * The month between two standings, by part number; parts that were not there and did not move
     * are left out.
     */
    public static List<PartWorth> between(
            Map<String, StoreStanding> before, Map<String, StoreStanding> after) {
        SortedSet<String> parts = new TreeSet<>(before.keySet());
        parts.addAll(after.keySet());
        return parts.stream()
                .map(
                        part ->
                                of(
                                        part,
                                        before.getOrDefault(part, StoreStanding.NONE),
                                        after.getOrDefault(part, StoreStanding.NONE)))
                .filter(PartWorth::isAnything)
                .toList();
    }

    private static PartWorth of(String part, StoreStanding before, StoreStanding after) {
        Quantity unknown = after.unknown().minus(before.unknown());
        Worth known = after.in().minus(before.in());
        Worth in = unknown.isZero() ? known : new Worth(known.quantity().plus(unknown), null);
        Worth out = before.held().plus(in).minus(after.held());
        return new PartWorth(part, before.held(), in, out, after.held());
    }

    private boolean isAnything() {
        return !(opening.quantity().isZero()
                && in.quantity().isZero()
                && out.quantity().isZero()
                && closing.quantity().isZero());
    }

    /**
     * With values in whole units of money; what went out takes the rounding, so that they add up.
     */
    public PartWorth inWholeUnits() {
        Worth before = opening.inWholeUnits();
        Worth came = in.inWholeUnits();
        Worth after = closing.inWholeUnits();
        return new PartWorth(part, before, came, before.plus(came).minus(after), after);
    }

    /** Whether every one of its costs is known. */
    public boolean isKnown() {
        return out.value() != null && closing.value() != null;
    }

    /** What one piece is worth at the end, on average; empty where none is there or known. */
    public Optional<BigDecimal> unitCost() {
        @Nullable BigDecimal value = closing.value();
        return value == null || closing.quantity().isZero()
                ? Optional.empty()
                : Optional.of(value.divide(closing.quantity().amount(), MathContext.DECIMAL128));
    }
}
