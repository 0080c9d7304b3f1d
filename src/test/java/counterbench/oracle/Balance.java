package counterbench.oracle;

import java.math.BigDecimal;

/** What an account holds of a part. */
public record Balance(String account, String part, BigDecimal quantity) {}
