package counterbench.oracle;

import java.math.BigDecimal;
import java.util.Map;

/** A kit at hand, with what came in it. */
record KitBox(String serial, String kitPart, Map<String, BigDecimal> contents) {

    boolean holds(String part) {
        return contents.getOrDefault(part, BigDecimal.ZERO).signum() > 0;
    }
}
