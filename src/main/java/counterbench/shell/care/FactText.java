package counterbench.shell.care;

import counterbench.claims.Money;
import counterbench.facts.Canonical;
import counterbench.facts.Column;
import counterbench.facts.ColumnType;
import counterbench.facts.FactRow;
import counterbench.shared.Site;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** What a fact says, in words. */
final class FactText {
    /** Characters of a time such as {@code 2026-03-05T14:20:00-06:00}. */
    static final int LOCAL_WIDTH = 25;

    private static final int LONGEST_DOCUMENT = 60;

    private FactText() {}

    /** Every heading that says something, with what it says. */
    static String said(Site site, FactRow row) {
        List<String> said = new ArrayList<>();
        for (int i = 0; i < row.values().size(); i++) {
            Object value = row.values().get(i);
            if (value != null) {
                Column column = row.kind().columns().get(i);
                said.add(column.heading() + " " + shown(site, column, value));
            }
        }
        if (row.ref() != null) {
            said.add("ref " + row.ref());
        }
        return String.join(", ", said);
    }

    private static String shown(Site site, Column column, Object value) {
        if (value instanceof Instant at) {
            return local(site, at);
        }
        if (value instanceof BigDecimal number && isMoney(column)) {
            return Money.text(number);
        }
        if (value instanceof BigDecimal number) {
            return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
        }
        String text = Canonical.text(column, value);
        return column.type() == ColumnType.DOCUMENT ? shortened(text) : text;
    }

    private static boolean isMoney(Column column) {
        return column.type() == ColumnType.AMOUNT || column.heading().equals("unit_cost");
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST_DOCUMENT
                ? text
                : text.substring(0, LONGEST_DOCUMENT) + "... (" + text.length() + " characters)";
    }

    /** A time at the site, to the second, with its offset. */
    static String local(Site site, Instant at) {
        return at.truncatedTo(ChronoUnit.SECONDS).atZone(site.zone()).toOffsetDateTime().toString();
    }
}
