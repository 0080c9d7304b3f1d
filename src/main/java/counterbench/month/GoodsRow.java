package counterbench.month;

import counterbench.shared.Quantity;
import java.time.YearMonth;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Where one part number came from and went in a month. The workshop's own stock is what lies in
 * kits, in the store and on benches.
 *
 * @param opening the stock at the month's start
 * @param received from the supplier, less what was found missing later
 * @param transferredIn arrived from other sites
 * @param transferredOut sent to other sites
 * @param fitted put on vehicles, less what was taken off them again
 * @param onCores put on cores
 * @param scrapped from the shelf, from benches, and what was taken off vehicles
 * @param returned sent back to the supplier
 * @param countDifference what counts added; below zero what they took away
 * @param closingBook the stock at the month's end
 * @param closingCount how much the month's last count found in the store; null if not counted
 * @param unexplained what counting found that no paper explains: the net of the month's count
 *     differences, of the store and of kits; null where the part was not counted at all
 */
public record GoodsRow(
        String part,
        Quantity opening,
        Quantity received,
        Quantity transferredIn,
        Quantity transferredOut,
        Quantity fitted,
        Quantity onCores,
        Quantity scrapped,
        Quantity returned,
        Quantity countDifference,
        Quantity closingBook,
        @Nullable Quantity closingCount,
        @Nullable Quantity unexplained) {
    public GoodsRow {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(opening, "opening");
        Objects.requireNonNull(received, "received");
        Objects.requireNonNull(transferredIn, "transferredIn");
        Objects.requireNonNull(transferredOut, "transferredOut");
        Objects.requireNonNull(fitted, "fitted");
        Objects.requireNonNull(onCores, "onCores");
        Objects.requireNonNull(scrapped, "scrapped");
        Objects.requireNonNull(returned, "returned");
        Objects.requireNonNull(countDifference, "countDifference");
        Objects.requireNonNull(closingBook, "closingBook");
    }

    /** The opening with everything that came in and without everything that went out. */
    public Quantity sum() {
        return opening.plus(received)
                .plus(transferredIn)
                .minus(transferredOut)
                .minus(fitted)
                .minus(onCores)
                .minus(scrapped)
                .minus(returned)
                .plus(countDifference);
    }

    /** Whether counting found something that no paper explains. */
    public boolean isUnexplained() {
        return unexplained != null && !unexplained.isZero();
    }

    /**
     * This row, if opening plus all movements equals closing to the last digit.
     *
     * @throws IllegalStateException if they do not, which is a fault of the program
     */
    GoodsRow balanced(YearMonth month) {
        if (!sum().equals(closingBook)) {
            throw new IllegalStateException(
                    String.format(
                            "goods of part %s in %s do not balance: opening %s and all movements"
                                    + " make %s, but the closing by book is %s (%s)",
                            part, month, opening, sum(), closingBook, this));
        }
        return this;
    }
}
