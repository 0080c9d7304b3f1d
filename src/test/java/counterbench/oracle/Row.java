package counterbench.oracle;

import java.math.BigDecimal;
import java.util.Map;

/** One row of a sheet: cells by lower-case heading; an empty cell is not there. */
record Row(Map<String, String> cells, int line) {

    String text(String heading) {
        return cells.getOrDefault(heading, "");
    }

    boolean has(String heading) {
        return cells.containsKey(heading);
    }

    BigDecimal number(String heading) {
        return has(heading) ? new BigDecimal(text(heading)) : BigDecimal.ZERO;
    }
}
