package counterbench.claims;

import java.util.Arrays;

/**
 * How old a claim is or a charge that is owed, in the steps of thirty days that are common in the
 * trade (no source).
 */
public enum Ageing {
    UP_TO_30("up to 30 days", 30),
    UP_TO_60("31 to 60 days", 60),
    UP_TO_90("61 to 90 days", 90),
    OLDER("over 90 days", Long.MAX_VALUE);

    private final String words;
    private final long last;

    Ageing(String words, long last) {
        this.words = words;
        this.last = last;
    }

    /** The step of an age in days. */
    public static Ageing of(long days) {
        return Arrays.stream(values()).filter(a -> days <= a.last).findFirst().orElse(OLDER);
    }

    /** As people read it. */
    public String words() {
        return words;
    }
}
