package counterbench.labels.gs1;

import java.util.regex.Pattern;

/**
 * The last digit of GS1's numbers: the digits before it are weighed 3, 1, 3 … from the right, and
 * it makes the sum a multiple of ten (GS1 General Specifications, section 7.9).
 */
public final class CheckDigit {
    private static final Pattern DIGITS = Pattern.compile("[0-9]+");

    private CheckDigit() {}

    /**
     * The digit that belongs behind these.
     *
     * @throws IllegalArgumentException if there are none, or something else is among them
     */
    public static char of(String digits) {
        if (!DIGITS.matcher(digits).matches()) {
            throw new IllegalArgumentException("\"" + digits + "\" is not all digits");
        }
        int sum = 0;
        for (int i = 0; i < digits.length(); i++) {
            int weight = (digits.length() - i) % 2 == 1 ? 3 : 1;
            sum += weight * (digits.charAt(i) - '0');
        }
        return (char) ('0' + (10 - sum % 10) % 10);
    }

    /** Whether a number is all digits and ends in the one that belongs there. */
    public static boolean holds(String number) {
        if (number.length() < 2 || !DIGITS.matcher(number).matches()) {
            return false;
        }
        int last = number.length() - 1;
        return number.charAt(last) == of(number.substring(0, last));
    }
}
