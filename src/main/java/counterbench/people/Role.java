package counterbench.people;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

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

    /** Roles as facts write them: {@code lead, parts}; in alphabetical order. */
    public static String listed(Collection<Role> roles) {
        return roles.stream().map(Role::word).distinct().sorted().collect(Collectors.joining(", "));
    }

    /** The roles in a text that {@link #listed} wrote; none where nothing was said. */
    public static Set<Role> ofList(@Nullable String listed) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        for (String word : listed == null ? new String[0] : listed.split(",", -1)) {
            of(word.strip()).ifPresent(roles::add);
        }
        return roles;
    }
}
