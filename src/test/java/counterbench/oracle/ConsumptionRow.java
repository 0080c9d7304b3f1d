package counterbench.oracle;

import java.math.BigDecimal;
import java.util.Set;

/** One part of the consumption table of a campaign and month. */
public record ConsumptionRow(
        String part,
        int completedJobs,
        BigDecimal required,
        BigDecimal fittedNew,
        BigDecimal refittedOld,
        BigDecimal scrapped,
        BigDecimal leftOnBenches,
        BigDecimal difference,
        Set<String> jobs) {}
