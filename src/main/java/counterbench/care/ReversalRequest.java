package counterbench.care;

import counterbench.shared.Refused;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What somebody wants to take back.
 *
 * @param entry the entry
 * @param line the line of one of its facts; empty for all that is left of it
 * @param reason why
 */
public record ReversalRequest(long entry, OptionalInt line, String reason) {
    private static final Pattern FORM = Pattern.compile("([0-9]{1,15})(?:\\.([0-9]{1,9}))?");

    /** The most characters that a reason may have. */
    private static final int LONGEST = 1_000;

    public ReversalRequest {
        if (reason.length() > LONGEST) {
            throw new Refused(
                    "reason of " + reason.length() + " characters",
                    "a reason has at most " + LONGEST,
                    "shorten it");
        }
    }

    /**
     * The request for what people type: {@code 12} or {@code 12.3}.
     *
     * @throws Refused if it is neither
     */
    public static ReversalRequest of(String typed, String reason) {
        Matcher parts = FORM.matcher(typed);
        if (!parts.matches()) {
            throw new Refused(
                    "entry \"" + typed + "\"",
                    "it is not the number of an entry or of one of its facts",
                    "write 12 for all of entry 12, or 12.3 for its third fact");
        }
        String line = parts.group(2);
        return new ReversalRequest(
                Long.parseLong(parts.group(1)),
                line == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(line)),
                reason);
    }

    /** As people type it. */
    public String typed() {
        return line.isPresent() ? entry + "." + line.getAsInt() : Long.toString(entry);
    }

    /** Whether a fact on a line of the entry is meant. */
    public boolean covers(int lineOfFact) {
        return line.isEmpty() || line.getAsInt() == lineOfFact;
    }
}
