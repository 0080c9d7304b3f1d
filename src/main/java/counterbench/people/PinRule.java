package counterbench.people;

import counterbench.shared.Refused;
import java.util.regex.Pattern;

/** What a new PIN must look like: 4 to 12 digits. */
public final class PinRule {
    private static final Pattern FORM = Pattern.compile("[0-9]{4,12}");

    private PinRule() {}

    /**
     * Refuses a PIN that does not look like one. The message does not repeat what was typed.
     *
     * @throws Refused if it is not 4 to 12 digits
     */
    public static void check(Pin pin) {
        if (!FORM.matcher(pin.typed()).matches()) {
            throw new Refused(
                    "new PIN", "it is not 4 to 12 digits", "choose another, of digits only");
        }
    }
}
