package counterbench.stock.worth;

import counterbench.shared.Quantity;
import counterbench.stock.Account;
import counterbench.stock.Move;
import counterbench.stock.StoreMoves;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What the store of a part has come to by the end of a month.
 *
 * @param held what is there
 * @param in all that ever came in and whose cost is known
 * @param unknown how many ever came in whose cost nobody knows
 */
public record StoreStanding(Worth held, Worth in, Quantity unknown) {
    /** Before anything came. */
    public static final StoreStanding NONE =
            new StoreStanding(Worth.NONE, Worth.NONE, Quantity.ZERO);

    /**
     * How inventory is costed.
     *
     * @param inbound what one piece costs that comes into the store from elsewhere than a job's
     *     loose parts; null where nobody knows
     * @param monthOf the month in which a move happened
     */
    public record Costing(
            CostMethod method,
            Rounding rounding,
            Function<Move, @Nullable BigDecimal> inbound,
            Function<Move, YearMonth> monthOf) {}

    /**
     * Works it out, by part number.
     *
     * @param moves all that touch the store, in the order of {@link StoreMoves#ORDER}
     * @param until the month at whose end it stands
     */
    public static SortedMap<String, StoreStanding> of(
            Collection<Move> moves, YearMonth until, Costing costing) {
        Map<String, List<Move>> byPart =
                moves.stream()
                        .filter(move -> !costing.monthOf().apply(move).isAfter(until))
                        .collect(Collectors.groupingBy(Move::part));
        SortedMap<String, StoreStanding> standings = new TreeMap<>();
        byPart.forEach((part, ofPart) -> standings.put(part, new Run(costing).through(ofPart)));
        return standings;
    }

    private static final class Run {
        private final Costing costing;
        private final CostFlow flow;
        private Worth in = Worth.NONE;
        private Quantity unknown = Quantity.ZERO;

        Run(Costing costing) {
            this.costing = costing;
            this.flow = costing.method().begin(costing.rounding());
        }

        StoreStanding through(List<Move> moves) {
            YearMonth month = costing.monthOf().apply(moves.get(0));
            for (Move move : moves) {
                YearMonth next = costing.monthOf().apply(move);
                if (next.isAfter(month)) {
                    flow.endMonth();
                    month = next;
                }
                take(move);
            }
            flow.endMonth();
            return new StoreStanding(flow.held(), in, unknown);
        }

        private void take(Move move) {
            if (StoreMoves.isPutBack(move)) {
                flow.back(move.source(), move.quantity(), move.from().toString());
            } else if (move.to().equals(Account.STORE)) {
                in(move, costing.inbound().apply(move));
            } else {
                flow.out(move.source(), move.quantity(), move.to().toString());
            }
        }

        private void in(Move move, @Nullable BigDecimal unitCost) {
            flow.in(move.source(), move.quantity(), unitCost);
            if (unitCost == null) {
                unknown = unknown.plus(move.quantity());
            } else {
                in = in.plus(Worth.of(move.quantity(), unitCost));
            }
        }
    }
}
