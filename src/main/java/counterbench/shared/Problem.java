package counterbench.shared;

import java.util.Objects;

/**
 * One refusal, in the order in which a person reads it.
 *
 * @param asked what was asked, with the offending value quoted
 * @param because why it is not possible
 * @param todo what to do instead; empty where the reason says it all
 */
public record Problem(String asked, String because, String todo) {
    public Problem {
        Objects.requireNonNull(asked, "asked");
        Objects.requireNonNull(because, "because");
        Objects.requireNonNull(todo, "todo");
    }

    /** The one or two lines that a person sees. */
    public String message() {
        String text = asked + ": " + because;
        return Visible.text(todo.isEmpty() ? text : text + "; " + todo);
    }
}
