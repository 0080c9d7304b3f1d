package counterbench.claims.draft;

import counterbench.shared.Quantity;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

/**
 * What the parts of a job cost the site.
 *
 * @param items what the cost is made of, as far as it is known
 * @param unknown what of it nobody knows, in words
 */
public record PartsCost(List<Item> items, List<String> unknown) {
    public PartsCost {
        items = List.copyOf(items);
        unknown = List.copyOf(unknown);
    }

    /**
     * So many of one thing.
     *
     * @param what as people say it: {@code kit FP-1053}
     * @param unitAmount what one cost; below zero for what was put back
     */
    public record Item(String what, Quantity quantity, BigDecimal unitAmount) {
        public Item {
            Objects.requireNonNull(what, "what");
            Objects.requireNonNull(quantity, "quantity");
            Objects.requireNonNull(unitAmount, "unitAmount");
        }

        /** What they come to, exactly. */
        public BigDecimal amount() {
            return unitAmount.multiply(quantity.amount());
        }
    }

    /** What the items come to, exactly. */
    public BigDecimal amount() {
        return items.stream().map(Item::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
