package counterbench.people;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a person may do. Everybody may read. */
public enum Role {
    /** Receives kits and sends cores. */
    PARTS,
    /** Fits the hardware and records what was done. */
    TECHNICIAN,
    /** Claims for the jobs. */
    WARRANTY,
    /** May do all; alone may override, seal and add people. */
    LEAD;

    /** The word that people type. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The role that a word names. */
    public static Optional<Role> of(String word) {
        return Arrays.stream(values()).filter(role -> role.word().equals(word)).findFirst();
    }
}
