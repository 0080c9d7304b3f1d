package counterbench.oracle;

import java.math.BigDecimal;
import java.util.Optional;

/** One part of the goods table of a site and month. */
public record GoodsRow(
        String part,
        BigDecimal opening,
        BigDecimal received,
        BigDecimal transferredIn,
        BigDecimal transferredOut,
        BigDecimal fitted,
        BigDecimal onCores,
        BigDecimal scrapped,
        BigDecimal returned,
        BigDecimal countDifference,
        BigDecimal closingBook,
        Optional<BigDecimal> closingCount,
        BigDecimal unexplained) {}
