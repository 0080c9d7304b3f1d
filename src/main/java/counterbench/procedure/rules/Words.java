package counterbench.procedure.rules;

import counterbench.campaign.Limits;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Numbers and limits as messages and evidence write them. */
final class Words {
    private Words() {}

    /** A plain decimal, the same for equal numbers however they are stored. */
    static String number(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    /** {@code 36.9 to 45.1 N·m}, {@code at least 2.8 V}, {@code at most 5 V}. */
    static String limits(Limits limits, @Nullable String unit) {
        String unitAfter = Words.unit(unit);
        if (limits.low() != null && limits.high() != null) {
            return number(limits.low()) + " to " + number(limits.high()) + unitAfter;
        }
        if (limits.low() != null) {
            return "at least " + number(limits.low()) + unitAfter;
        }
        return limits.high() == null ? "anything" : "at most " + number(limits.high()) + unitAfter;
    }

    /** A unit as it stands behind a number. */
    static String unit(@Nullable String unit) {
        return unit == null || unit.isEmpty() ? "" : " " + unit;
    }
}
