package counterbench.acts.desk;

import java.util.Objects;

/**
 * One thing that stands against submitting a claim; the lead may override it.
 *
 * @param why what stands against it
 * @param todo what puts it right, as commands
 */
public record Against(String why, String todo) {
    public Against {
        Objects.requireNonNull(why, "why");
        Objects.requireNonNull(todo, "todo");
    }
}
