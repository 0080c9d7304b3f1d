package counterbench.shared.vin;

import static counterbench.shared.packed.PackedTable.cell;

import counterbench.shared.Visible;
import counterbench.shared.packed.PackedTable;
import counterbench.shared.vin.VinFault.Reason;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Judges VINs by 49 CFR 565.15(c): each letter has a value, each position a weight; the sum of the
 * products modulo 11 is the check digit in position 9, and 10 is written {@code X}.
 *
 * <p>Only form is judged. Seventeen zeros have a right form (their sum is 0), so they pass here,
 * like any well-formed number that no maker ever gave; that no such vehicle is affected is for the
 * campaign's list to say.
 */
public final class Vin {
    private static final int LENGTH = 17;
    private static final int CHECK_POSITION = 9;
    private static final String FORBIDDEN = "IOQ";
    private static final Map<String, Integer> VALUES = table("letter");
    private static final Map<String, Integer> WEIGHTS = table("weight");

    private Vin() {}

    /** A VIN as it is compared: upper case without spaces. */
    public static String compared(String vin) {
        return vin.replaceAll("\\s", "").toUpperCase(Locale.ROOT);
    }

    /**
     * What is wrong with a VIN; empty if nothing is. The check digit is looked at only where all
     * else is right.
     *
     * @param withCheckDigit whether position 9 must be the check digit; some makers use it
     *     otherwise
     */
    public static List<VinFault> faults(String vin, boolean withCheckDigit) {
        String compared = compared(vin);
        List<VinFault> faults = new ArrayList<>();
        length(compared).ifPresent(faults::add);
        compared.codePoints().forEach(c -> character(c).ifPresent(faults::add));
        if (faults.isEmpty() && withCheckDigit) {
            checkDigit(compared).ifPresent(faults::add);
        }
        return faults.stream().distinct().sorted(Comparator.comparing(VinFault::reason)).toList();
    }

    /**
     * The check digit that a VIN of seventeen good characters should have in position 9.
     *
     * @throws IllegalArgumentException if its length or a character is wrong
     */
    public static char expectedCheckDigit(String vin) {
        String compared = compared(vin);
        if (!faults(compared, false).isEmpty()) {
            throw new IllegalArgumentException(vin + " has no check digit");
        }
        return digit(sum(compared) % 11);
    }

    private static Optional<VinFault> length(String vin) {
        int length = vin.codePointCount(0, vin.length());
        return length == LENGTH
                ? Optional.empty()
                : fault(Reason.LENGTH, "it has " + length + " characters, not " + LENGTH);
    }

    private static Optional<VinFault> character(int c) {
        String shown = Visible.text(Character.toString(c));
        if (FORBIDDEN.indexOf(c) >= 0) {
            return fault(Reason.FORBIDDEN_LETTER, "no VIN has the letter " + shown);
        }
        boolean known = (c >= '0' && c <= '9') || VALUES.containsKey(shown);
        return known
                ? Optional.empty()
                : fault(Reason.OTHER_CHARACTER, "\"" + shown + "\" is no letter A to Z or digit");
    }

    private static Optional<VinFault> checkDigit(String vin) {
        char found = vin.charAt(CHECK_POSITION - 1);
        char expected = expectedCheckDigit(vin);
        return found == expected
                ? Optional.empty()
                : fault(
                        Reason.CHECK_DIGIT,
                        "its check digit is " + found + ", its other characters give " + expected);
    }

    private static int sum(String vin) {
        int sum = 0;
        for (int i = 0; i < LENGTH; i++) {
            String position = String.valueOf(i + 1);
            sum += WEIGHTS.getOrDefault(position, 0) * value(vin.charAt(i));
        }
        return sum;
    }

    private static int value(char c) {
        return c <= '9' ? c - '0' : VALUES.getOrDefault(String.valueOf(c), 0);
    }

    private static char digit(int remainder) {
        return remainder == 10 ? 'X' : (char) ('0' + remainder);
    }

    private static Optional<VinFault> fault(Reason reason, String because) {
        return Optional.of(new VinFault(reason, because));
    }

    private static Map<String, Integer> table(String name) {
        Function<Map<String, String>, String> key = row -> cell(row, "key");
        return PackedTable.rows("vin.csv").stream()
                .filter(row -> name.equals(row.get("table")))
                .collect(
                        Collectors.toUnmodifiableMap(
                                key, row -> Integer.valueOf(cell(row, "value"))));
    }
}
