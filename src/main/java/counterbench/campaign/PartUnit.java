package counterbench.campaign;

import java.util.Arrays;
import java.util.Optional;

/** What a part is counted or measured in. */
public enum PartUnit {
    EACH("each"),
    ML("mL"),
    G("g");

    private final String word;

    PartUnit(String word) {
        this.word = word;
    }

    /** The word that files use. */
    public String word() {
        return word;
    }

    /** Whether the part is measured, not counted. */
    public boolean isMeasured() {
        return this != EACH;
    }

    /** The unit of that word, in any letter case. */
    public static Optional<PartUnit> of(String word) {
        return Arrays.stream(values()).filter(u -> u.word.equalsIgnoreCase(word)).findFirst();
    }
}
