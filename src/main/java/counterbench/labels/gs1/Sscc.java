package counterbench.labels.gs1;

import java.util.Locale;

/**
 * The number of one shipped unit, eighteen digits: extension digit, company prefix, serial
 * reference, check digit (GS1 General Specifications, section 2.2.1).
 */
public record Sscc(String digits) {
    /** Its application identifier. */
    public static final String AI = "00";

    private static final int BEFORE_CHECK_DIGIT = 17;

    /**
     * @throws IllegalArgumentException if it is none
     */
    public Sscc {
        Element.faultOf(AI, digits)
                .ifPresent(
                        fault -> {
                            throw new IllegalArgumentException(fault);
                        });
    }

    /**
     * Builds one.
     *
     * @param extension 0 to 9, as the company likes
     * @param serial 0 or more, with no more digits than the prefix leaves
     * @throws IllegalArgumentException if they do not fit
     */
    public static Sscc of(CompanyPrefix prefix, int extension, long serial) {
        if (extension < 0 || extension > 9 || serial < 0 || serial >= serials(prefix)) {
            throw new IllegalArgumentException(
                    "extension " + extension + " and serial " + serial + " do not fit");
        }
        int length = BEFORE_CHECK_DIGIT - 1 - prefix.digits().length();
        String body =
                extension
                        + prefix.digits()
                        + String.format(Locale.ROOT, "%0" + length + "d", serial);
        return new Sscc(body + CheckDigit.of(body));
    }

    /** The extension digit. */
    public int extension() {
        return digits.charAt(0) - '0';
    }

    /** The serial reference behind a prefix. */
    public long serial(CompanyPrefix prefix) {
        return Long.parseLong(digits.substring(1 + prefix.digits().length(), BEFORE_CHECK_DIGIT));
    }

    /** How many serial references a prefix leaves. */
    public static long serials(CompanyPrefix prefix) {
        long count = 1;
        for (int i = prefix.digits().length(); i < BEFORE_CHECK_DIGIT - 1; i++) {
            count *= 10;
        }
        return count;
    }
}
