package counterbench.oracle;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Map;

/**
 * Units of marks, brought to one base each (N·m, kPa, °C, mL, g). Factors: NIST SP 811 (2008) B.8,
 * exact but for psi, which is 4.4482216152605 N over 0.0254 m squared.
 */
final class Units {

    private static final Map<String, BigDecimal> FACTORS =
            Map.of(
                    "nm", BigDecimal.ONE,
                    "lbfft", new BigDecimal("1.3558179483314004"),
                    "lbfin", new BigDecimal("0.1129848290276167"),
                    "kgfcm", new BigDecimal("0.0980665"),
                    "bar", new BigDecimal("100"),
                    "psi", new BigDecimal("6.894757293168361"),
                    "floz", new BigDecimal("29.5735295625"),
                    "oz", new BigDecimal("28.349523125"));

    private Units() {}

    static BigDecimal base(BigDecimal value, String unit) {
        if (word(unit).equals("°f")) {
            return value.subtract(new BigDecimal("32"))
                    .multiply(new BigDecimal("5"))
                    .divide(new BigDecimal("9"), MathContext.DECIMAL128);
        }
        return baseDifference(value, unit);
    }

    /** A difference of two values: without the zero point of the scale. */
    static BigDecimal baseDifference(BigDecimal value, String unit) {
        if (word(unit).equals("°f")) {
            return value.multiply(new BigDecimal("5"))
                    .divide(new BigDecimal("9"), MathContext.DECIMAL128);
        }
        return value.multiply(FACTORS.getOrDefault(word(unit), BigDecimal.ONE));
    }

    private static String word(String unit) {
        String letters = unit.toLowerCase(Locale.ROOT).replaceAll("[^a-z°]", "");
        return switch (letters) {
            case "lbft", "ftlb", "ftlbf" -> "lbfft";
            case "lbin", "inlb", "inlbf" -> "lbfin";
            default -> letters;
        };
    }
}
