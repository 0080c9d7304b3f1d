package counterbench.campaign.yaml;

import counterbench.campaign.Limits;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What a step asks to be measured.
 *
 * @param unit the unit of target and limits
 * @param target the stated torque
 * @param also what was stated in a second unit, for show
 */
record Demand(
        @Nullable String unit, @Nullable BigDecimal target, Limits limits, @Nullable String also) {
    static final Limits NO_LIMITS = new Limits(null, null);
    static final Demand NONE = new Demand(null, null, NO_LIMITS, null);
}
