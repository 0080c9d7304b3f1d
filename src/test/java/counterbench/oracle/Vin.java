package counterbench.oracle;

import java.util.Locale;

/** The 17 characters of a vehicle; check digit by 49 CFR 565.15(c). */
final class Vin {

    private static final String LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZ";
    private static final String VALUES = "12345678123457923456789";
    private static final int[] WEIGHTS = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};

    private Vin() {}

    /** Upper case without spaces. */
    static String plain(String vin) {
        return vin.toUpperCase(Locale.ROOT).replaceAll("\\s", "");
    }

    static boolean valid(String vin, boolean checkDigit) {
        String plain = plain(vin);
        return plain.matches("[A-HJ-NPR-Z0-9]{17}")
                && (!checkDigit || plain.charAt(8) == checkDigit(plain));
    }

    static char checkDigit(String vin) {
        int sum = 0;
        for (int i = 0; i < 17; i++) {
            sum += WEIGHTS[i] * value(vin.charAt(i));
        }
        return "0123456789X".charAt(sum % 11);
    }

    private static int value(char c) {
        int letter = LETTERS.indexOf(c);
        return letter < 0 ? Character.digit(c, 10) : Character.digit(VALUES.charAt(letter), 10);
    }
}
