package counterbench.oracle;

import java.math.BigDecimal;

/** A number with the unit that was written behind it, empty where none was. */
record Amount(BigDecimal number, String unit) {

    static Amount parse(String text) {
        String[] words = text.strip().split("\\s+", 2);
        return new Amount(new BigDecimal(words[0]), words.length > 1 ? words[1] : "");
    }

    boolean measured() {
        return !unit.isEmpty();
    }

    Amount orUnit(String other) {
        return unit.isEmpty() ? new Amount(number, other) : this;
    }

    BigDecimal base() {
        return Units.base(number, unit);
    }
}
