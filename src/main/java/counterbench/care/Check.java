package counterbench.care;

import java.util.Locale;
import java.util.Objects;

/**
 * One thing that was looked at.
 *
 * @param subject what was looked at
 * @param found how it was found
 * @param todo what to do about it; empty where nothing needs doing
 */
public record Check(String subject, State state, String found, String todo) {
    /** How a thing is. */
    public enum State {
        /** As it should be. */
        GOOD,
        /** Worth knowing. */
        NOTE,
        /** Not as it should be. */
        BAD;

        /** The word that people read. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public Check {
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(found, "found");
        Objects.requireNonNull(todo, "todo");
    }

    /** Something that is as it should be. */
    public static Check good(String subject, String found) {
        return new Check(subject, State.GOOD, found, "");
    }

    /** Something worth knowing. */
    public static Check note(String subject, String found, String todo) {
        return new Check(subject, State.NOTE, found, todo);
    }

    /** Something that is not as it should be. */
    public static Check bad(String subject, String found, String todo) {
        return new Check(subject, State.BAD, found, todo);
    }
}
