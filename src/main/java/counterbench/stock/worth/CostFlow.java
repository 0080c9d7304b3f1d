package counterbench.stock.worth;

import counterbench.shared.Quantity;
import counterbench.stock.Source;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** What the store of one part is worth, as pieces come and go in order of time. */
public interface CostFlow {
    /**
     * Takes pieces in that cost what their paper says.
     *
     * @param unitCost null where nobody knows
     */
    void in(Source source, Quantity quantity, @Nullable BigDecimal unitCost);

    /**
     * Gives pieces out.
     *
     * @param source the lot that is named; {@link Source#LOOSE} where none is
     * @param taker who may put some of them back
     */
    void out(Source source, Quantity quantity, String taker);

    /** Takes back what a taker did not use, at what it cost when it went out. */
    void back(Source source, Quantity quantity, String taker);

    /** Ends a month; methods that cost month by month do so now. */
    void endMonth();

    /** What is there at the end of the last month that ended. */
    Worth held();
}
