package counterbench.campaign.yaml;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;

/** Reads percentages, such as {@code 30 %}. */
final class Percent {
    private Percent() {}

    /** A percentage, not below zero; a number without the sign is refused. */
    static Optional<BigDecimal> read(Value value) {
        return StatedReader.parts(value).flatMap(parts -> read(value, parts));
    }

    private static Optional<BigDecimal> read(Value value, Matcher parts) {
        BigDecimal number = new BigDecimal(parts.group(1));
        if (!isPercent(parts)) {
            value.refuse("it is not a percentage", "write it with its sign, such as 30 %");
        } else if (number.signum() < 0) {
            value.refuse("it is negative", "write 0 % or more");
        } else {
            return Optional.of(number);
        }
        return Optional.empty();
    }

    /** Whether a number is followed by the sign alone. */
    static boolean isPercent(Matcher parts) {
        return parts.group(2).equals("%");
    }
}
