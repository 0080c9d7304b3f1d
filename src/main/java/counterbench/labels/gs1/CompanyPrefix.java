package counterbench.labels.gs1;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The digits that GS1 lends to a company, with which its numbers begin.
 *
 * @param digits seven to ten
 */
public record CompanyPrefix(String digits) {
    private static final Pattern FORM = Pattern.compile("[0-9]{7,10}");

    /**
     * @throws IllegalArgumentException if it is none
     */
    public CompanyPrefix {
        faultOf(digits)
                .ifPresent(
                        fault -> {
                            throw new IllegalArgumentException(fault);
                        });
    }

    /** Why something is no company prefix; empty if it is one. */
    public static Optional<String> faultOf(String digits) {
        return FORM.matcher(digits).matches()
                ? Optional.empty()
                : Optional.of("a company prefix has 7 to 10 digits and nothing else");
    }
}
